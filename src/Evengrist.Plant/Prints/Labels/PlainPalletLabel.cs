using System.Globalization;
using Evengrist.Packing.Codes;
using Evengrist.Plant.Gs1.Symbols;

namespace Evengrist.Plant.Prints.Labels;

/// <summary>The label of a pallet that has no number (SSCC): its own code in plain bars, which mean something in this mill alone.</summary>
internal static class PlainPalletLabel
{
    public static Parsed<Label> Draw(PalletFacts facts, LabelSize size)
    {
        var write = new LabelWriter(size);
        write.Line(facts.Mill, 10, bold: true);
        write.Line(facts.Name, 18, bold: true);
        write.Line(string.Create(CultureInfo.InvariantCulture, $"{facts.Count} × {facts.EachKilograms:0.###} kg = {facts.Count * facts.EachKilograms:#,0.###} kg net"), 14, bold: true);
        write.Line("Lot " + facts.Lot.Text, 14, bold: true);
        write.Line($"Milled {LabelWriter.Date(facts.Made)}   Best before {LabelWriter.Date(facts.BestBefore)}", 10, bold: true);
        write.Cautions(facts.Contains, 7.5);
        if (facts.Hold.Length > 0)
        {
            write.Stamp("HOLD", facts.Hold);
            write.Remark("The pallet is on HOLD, and its label says so: it is not for dispatch.");
        }

        write.Rule();
        write.Line("PALLET " + facts.Pallet, 16, bold: true);
        write.Bars(Gs1Symbols.Plain(facts.Pallet), 32);
        write.Remark(facts.Item is null ? "The product has no trade item number: the label carries the pallet's own code alone." : "The pallet has no number (SSCC): its label carries its own code alone, which only this mill understands. Keep the company prefix that GS1 lent the mill.");
        return write.Close($"Pallet {facts.Pallet} of {facts.Name}, lot {facts.Lot}", null);
    }
}
