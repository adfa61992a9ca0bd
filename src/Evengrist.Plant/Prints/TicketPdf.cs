using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Plant.Prints;

/// <summary>A receiving ticket as PDF: weights, factors with their basis, price lines, bin and signatures, black on white.</summary>
public static class TicketPdf
{
    private static readonly double[] Pairs = [0.17, 0.33, 0.17, 0.33], ReadingColumns = [0.25, -0.13, 0.15, -0.12, 0.35], LineColumns = [0.26, -0.15, 0.14, 0.45];

    /// <summary>The print.</summary>
    public static byte[] Write(TicketSheet sheet, PrintHead head, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(paper);
        using var leaf = new Leaf(paper, $"Receiving ticket {sheet.Number}", $"{head.Mill}: receiving ticket {sheet.Number}{(sheet.IsVoid ? ", VOID" : "")}, continued");
        leaf.Text(head.Mill + (head.IsDemonstration ? " (an invented mill)" : ""), 10, bold: true, gap: 0);
        leaf.Text($"Receiving ticket {sheet.Number}", 18, bold: true, gap: 4);
        if (sheet.IsVoid)
        {
            leaf.Stamp("VOID", "This ticket was voided. It is kept, and settles nothing.");
        }

        if (sheet.NotForSettlement is { } against)
        {
            leaf.Stamp("NOT FOR SETTLEMENT", against);
        }

        Head(leaf, sheet, head);
        Readings(leaf, sheet, head.Units);
        Settlement(leaf, sheet, head.Units);
        foreach (var remark in sheet.Remarks)
        {
            leaf.Text("Remark: " + remark);
        }

        leaf.Sign("Scale house", "Driver");
        leaf.Text("Seen numbers stand as they were read; reckoned ones say how. ± is twice the standard uncertainty. Pay from a certified scale and meter only; local code prevails.", 7.5);
        return leaf.Close($"Printed {head.Say(head.Printed)} ({head.Zone.Id}) from the ledger as of {head.Say(sheet.AsOf)}, data up to {sheet.Version}.");
    }

    private static void Head(Leaf leaf, TicketSheet sheet, PrintHead head)
    {
        var source = sheet.Source is null ? "not said" : $"{sheet.Source.Code} {(sheet.Source.Kind == PlaceKind.Elevator ? "(field unknown)" : sheet.Source.Of)}";
        (string Name, string Value)[] pairs =
        [
            ("Plate", sheet.Plate), ("Class", sheet.Class),
            ("From", source), ("Grower or haulier", sheet.Haulier.Length > 0 ? sheet.Haulier : "not said"),
            ("Bin", sheet.Bin.Length > 0 ? sheet.Bin : "none yet"), ("Decided", sheet.Decision.Length > 0 ? sheet.Decision : "not recorded apart"),
            ("Contract", sheet.Outcome is Settlement { Under: var under } ? under : sheet.Contract.Length > 0 ? sheet.Contract : "none"),
            ("Net, reckoned", sheet.Net > Mass.Zero ? $"{Shown.Weight(sheet.Net, head.Units)}" : "not weighed empty yet"),
        ];
        for (var i = 0; i < pairs.Length; i += 2)
        {
            leaf.Row(Pairs, [pairs[i].Name, pairs[i].Value, pairs[i + 1].Name, pairs[i + 1].Value], ruled: false);
        }

        leaf.Text("Stages: " + string.Join(" · ", sheet.State.Reached.Select(r => $"{TruckState.WordsOf(r.Stage)}{(r.Stage == TruckStage.SentTo ? " " + sheet.Bin : "")} {head.Say(r.At)}")), 8.5, gap: 6);
    }

    private static void Readings(Leaf leaf, TicketSheet sheet, UnitSystem units)
    {
        leaf.Text("What was read", 11, bold: true);
        leaf.Row(ReadingColumns, ["property", "seen", "unit and basis", "± (k = 2)", "method, instrument"], bold: true);
        foreach (var reading in sheet.Readings)
        {
            // A test weight keeps the convention it was read in: its unit alone does not tell the formula.
            var figure = Finding.Of(reading).AsFigure();
            var value = reading.What == Property.TestWeight ? new ShownValue(reading.Value.ToString(System.Globalization.CultureInfo.InvariantCulture), reading.Unit) : figure.In(units);
            leaf.Row(ReadingColumns, [
                reading.What.Words(), value.Value, value.Unit + (reading.Basis.IsStated ? " " + reading.Basis : ""),
                reading.What == Property.TestWeight ? TwiceOf(reading) : figure.PlusMinus(units)?.Value ?? "not stated", $"{reading.Method} {reading.Instrument}".TrimEnd()]);
        }

        leaf.Gap(6);
    }

    private static string TwiceOf(Reading reading) => reading.StandardUncertainty is { } one ? (2 * one).ToString("0.0##", System.Globalization.CultureInfo.InvariantCulture) : "not stated";

    private static void Settlement(Leaf leaf, TicketSheet sheet, UnitSystem units)
    {
        leaf.Text("Settlement, line by line", 11, bold: true);
        if (sheet.Outcome is not Settlement settled)
        {
            leaf.Text("Not settled. " + string.Join(" ", sheet.Outcome is NotSettled not ? not.Reasons : []));
            return;
        }

        leaf.Row(LineColumns, ["line", "value", "unit and basis", "how"], bold: true);
        foreach (var line in settled.Lines)
        {
            var value = line.In(units);
            leaf.Row(LineColumns, [line.What, value.Value, value.Unit + (line.Basis.IsStated ? " " + line.Basis : ""), line.Origin == Origin.Seen ? "seen" : line.Because!.Formula], bold: line.What == "pay");
        }
    }
}
