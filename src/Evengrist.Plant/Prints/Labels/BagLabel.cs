using System.Globalization;
using Evengrist.Packing.Codes;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Checks;
using Evengrist.Plant.Gs1.Links;
using Evengrist.Plant.Gs1.Symbols;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>The label of one bag: what it is, how much, which lot, until when; a Data Matrix with all of it, a QR code with its link, its item number in bars.</summary>
public static class BagLabel
{
    /// <summary>The label, or every reason why there is none.</summary>
    /// <param name="label">What it says.</param>
    /// <param name="serial">The bag's own number, if it has one.</param>
    /// <param name="size">The sheet.</param>
    /// <param name="year">This year, for the century of dates.</param>
    public static Parsed<Label> Draw(LabelCase label, string? serial, LabelSize size, int year)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(size);
        var pairs = new List<(string, string)> { ("01", label.Item.Digits), ("15", SymbolDate.Write(label.BestBefore)), ("3103", Grams(label)), ("10", label.Lot.Text) };
        if (serial is not null)
        {
            pairs.Add(("21", serial));
        }

        return LabelText.Checked(label, year).Then(_ => ElementString.Make(pairs, year)).Then(elements => DigitalLinks.Write(elements).Then(link => Draw(label, size, elements, link)));
    }

    private static Parsed<Label> Draw(LabelCase label, LabelSize size, ElementString elements, string link)
    {
        var write = new LabelWriter(size);
        write.Line(label.Mill, 10, bold: true);
        write.Line(label.Flour, 26, bold: true);
        write.Line("Net weight " + LabelWriter.Weight(label.NetKilograms), 20, bold: true);
        write.Rule();
        write.Line("Lot " + label.Lot.Text, 18, bold: true);
        write.Line("Best before " + LabelWriter.Date(label.BestBefore), 16, bold: true);
        if (label.Made is { } made)
        {
            write.Line($"Milled {LabelWriter.Date(made)}, day {PackDates.DayNumber(made)}", 9);
        }

        write.Cautions(label, 10);
        write.Paragraph("Wash hands, bowls and surfaces after they touched it.", 10);
        write.Rule();
        const double Square = 42;
        var top = write.Y;
        var side = write.Square(Gs1Symbols.DataMatrix(elements), right: false, top, Square);
        write.Y = top + Math.Max(side, write.Square(Gs1Symbols.Qr(link), right: true, top, Square)) + 1;
        write.Paragraph(elements.ToString(), 8);
        write.Bars(new ElementString([elements.Elements[0]]), 18);
        return write.Close($"Bag of {label.Flour}, lot {label.Lot}", elements);
    }

    // Three decimals of a kilogram: whole grams.
    private static string Grams(LabelCase label) => ((long)(label.NetKilograms * 1000)).ToString("000000", CultureInfo.InvariantCulture);
}
