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
        return LabelText.Checked(label, year).Then(_ => ElementString.Make(pairs, year)).Then(elements => Draw(label, bags, size, elements));
    }

    private static Parsed<Label> Draw(LabelCase label, int bags, LabelSize size, ElementString elements)
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
        write.Rule();
        write.Line("PALLET (SSCC) " + elements["00"], 13, bold: true);
        write.Line($"CONTENT {elements["02"]}   COUNT {elements["37"]}", 9);
        write.Rule();
        write.Bars(Part("02", "37"), 18);
        write.Bars(Part("15", "10"), 18);
        write.Bars(Part("00"), 32);
        return write.Close($"Pallet {elements["00"]} of {label.Flour}, lot {label.Lot}", elements);

        ElementString Part(params string[] codes) => new([.. elements.Elements.Where(e => codes.Contains(e.Code))]);
    }
}
