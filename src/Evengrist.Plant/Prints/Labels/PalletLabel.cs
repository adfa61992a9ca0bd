using System.Globalization;
using Evengrist.Packing.Codes;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Checks;
using Evengrist.Plant.Gs1.Symbols;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>The label of a pallet: whose flour, how many bags, which lot, until when; bars for scanners from above down to the pallet's number, and a Data Matrix with all of it.</summary>
public static class PalletLabel
{
    /// <summary>The label, or every reason why there is none.</summary>
    /// <param name="label">What lies on it.</param>
    /// <param name="unit">The pallet's number.</param>
    /// <param name="bags">How many bags.</param>
    /// <param name="size">The sheet.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static Parsed<Label> Draw(LabelCase label, Sscc unit, int bags, LabelSize size, int year)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(unit);
        ArgumentNullException.ThrowIfNull(size);
        if (bags < 1)
        {
            return Parsing.Failed<Label>(Fault.AtPath("$.bags", bags.ToString(CultureInfo.InvariantCulture), "at least one bag"));
        }

        (string, string)[] pairs = [("00", unit.Digits), ("02", label.Item.Digits), ("15", SymbolDate.Write(label.BestBefore)), ("37", bags.ToString(CultureInfo.InvariantCulture)), ("10", label.Lot.Text)];
        return LabelText.Checked(label, year).Then(_ => ElementString.Make(pairs, year)).Then(elements => Draw(label, bags, size, elements, "", ""));
    }

    /// <summary>The label of a pallet of the ledger, or every reason why there is none. Without a number (SSCC) it carries the pallet's own code alone, in a plain symbol.</summary>
    /// <param name="facts">What the ledger says of it.</param>
    /// <param name="size">The sheet.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static Parsed<Label> Draw(PalletFacts facts, LabelSize size, int year)
    {
        ArgumentNullException.ThrowIfNull(facts);
        ArgumentNullException.ThrowIfNull(size);
        if (facts.Number is null || facts.Item is null)
        {
            return PlainPalletLabel.Draw(facts, size);
        }

        var label = new LabelCase(facts.Mill, facts.Name, facts.Item, facts.EachKilograms, facts.Lot, facts.BestBefore, facts.Contains) { Made = facts.Made };
        (string, string)[] pairs = [("00", facts.Number.Digits), ("02", facts.Item.Digits), ("15", SymbolDate.Write(facts.BestBefore)), ("37", facts.Count.ToString(CultureInfo.InvariantCulture)), ("10", facts.Lot.Text)];
        return LabelText.Checked(label, year).Then(_ => ElementString.Make(pairs, year)).Then(elements => Draw(label, facts.Count, size, elements, facts.Pallet, facts.Hold));
    }

    private static Parsed<Label> Draw(LabelCase label, int bags, LabelSize size, ElementString elements, string own, string hold)
    {
        const double Matrix = 24;
        var write = new LabelWriter(size);
        var room = write.Room - Matrix - 2;
        write.Square(Gs1Symbols.DataMatrix(elements), right: true, write.Y, Matrix);
        write.Line(label.Mill, 10, bold: true, room: room);
        write.Line(label.Flour, 18, bold: true, room: room);
        write.Line(string.Create(CultureInfo.InvariantCulture, $"{bags} × {label.NetKilograms:0.###} kg = {bags * label.NetKilograms:#,0.###} kg net"), 12, bold: true, room: room);
        write.Line("Lot " + label.Lot.Text, 12, bold: true, room: room);
        write.Line("Best before " + LabelWriter.Date(label.BestBefore), 12, bold: true, room: room);
        write.Cautions(label, 7.5);
        if (hold.Length > 0)
        {
            write.Stamp("HOLD", hold);
        }

        write.Rule();
        write.Line("PALLET (SSCC) " + elements["00"], 13, bold: true);
        write.Line($"CONTENT {elements["02"]}   COUNT {elements["37"]}{(own.Length > 0 ? $"   {own}" : "")}", 9);
        write.Rule();

        // Date and lot stand in one symbol where its bars get the width that logistics asks for, else each in its own, lower where a hold takes room.
        var high = hold.Length > 0 ? 9.0 : write.FitsLogistics(Part("15", "10")) ? 18 : 12;
        write.Bars(Part("02", "37"), high);
        foreach (var part in write.FitsLogistics(Part("15", "10")) ? new[] { Part("15", "10") } : [Part("15"), Part("10")])
        {
            write.Bars(part, high);
        }

        write.Bars(Part("00"), hold.Length > 0 ? 18 : 32);
        if (hold.Length > 0)
        {
            write.Remark("The pallet is on HOLD, and its label says so: it is not for dispatch.");
        }

        return write.Close($"Pallet {elements["00"]} of {label.Flour}, lot {label.Lot}", elements);

        ElementString Part(params string[] codes) => new([.. elements.Elements.Where(e => codes.Contains(e.Code))]);
    }
}
