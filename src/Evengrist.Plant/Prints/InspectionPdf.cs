using System.Globalization;
using Evengrist.Packing.NetContent;

namespace Evengrist.Plant.Prints;

/// <summary>An inspection of net content as PDF, black on white: every weight, the plan, the limits, what was found, who sampled and who signed.</summary>
public static class InspectionPdf
{
    private static readonly double[] Pairs = [0.17, 0.33, 0.17, 0.33], Columns = [-0.08, -0.17, -0.17, -0.08, -0.17, -0.17, 0.16];

    /// <summary>The print.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="inspection">The inspection.</param>
    /// <param name="source">Where the figures of its law come from, and what of them is from memory.</param>
    /// <param name="head">Whose, on which clock, printed when.</param>
    /// <param name="paper">The sheet.</param>
    public static byte[] Write(string number, ContentInspection inspection, string source, PrintHead head, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(paper);
        using var leaf = new Leaf(paper, $"Inspection of net content {number}", $"{head.Mill}: inspection of net content {number}, continued");
        leaf.Text(head.Mill + (head.IsDemonstration ? " (an invented mill)" : ""), 10, bold: true, gap: 0);
        leaf.Text("Inspection of net content", 18, bold: true, gap: 2);
        leaf.Text(number, 10, bold: true, gap: 6);
        Head(leaf, inspection, head);
        leaf.Text(inspection.American() is { } us ? (us.Passes ? "The lot passes." : "The lot does not pass.") : inspection.European() is { } eu ? (eu.Count == CountVerdict.SecondSample ? "The count says neither yes nor no: a second sample is asked for." : eu.Passes ? "The batch passes." : "The batch does not pass.") : "", 13, bold: true, gap: 4);
        foreach (var line in Said(inspection))
        {
            leaf.Text(line);
        }

        Weights(leaf, inspection, inspection.Gross, "Weights, g, in the order they were weighed", 0);
        if (inspection.Second.Count > 0)
        {
            Weights(leaf, inspection, inspection.Second, "Second sample, g", inspection.Gross.Count);
        }

        if (inspection.Remark.Length > 0)
        {
            leaf.Text("Remark: " + inspection.Remark);
        }

        leaf.Text(source, 8);
        leaf.Text("The check is the mill's own: the weights and measures authority decides what is lawful, and a named person decides what is packed.", 8);
        leaf.Sign($"Sampled: {inspection.SampledBy}, {head.Say(inspection.SampledAt)}", $"Signed: {inspection.SignedBy}");
        return leaf.Close($"Printed {head.Say(head.Printed)} ({head.Zone.Id}).");
    }

    /// <summary>What an inspection found, line by line: plan, limits, counts.</summary>
    public static IReadOnlyList<string> Said(ContentInspection inspection)
    {
        ArgumentNullException.ThrowIfNull(inspection);
        if (inspection.American() is { } us)
        {
            return
            [
                string.Create(CultureInfo.InvariantCulture, $"Plan: of a lot of {inspection.LotSize:#,0} packages {us.Plan.Size} are weighed; factor {us.Plan.Factor:0.###}; {us.Plan.Allowed} may be short by more than the allowed variation."),
                string.Create(CultureInfo.InvariantCulture, $"Average: mean error {us.MeanError:0.00} g, standard deviation {us.Deviation:0.00} g; short by up to {us.ErrorLimit:0.00} g passes: {(us.Average switch { AverageVerdict.Passes => "passes", AverageVerdict.Grey => "short by no more than drying may explain (3 % of the label, from memory): find out whether it does", _ => "does not pass" })}."),
                string.Create(CultureInfo.InvariantCulture, $"Each package: {us.Short} short by more than {us.Variation:0.0} g: {(us.IsEachEnough ? "passes" : "does not pass")}."),
            ];
        }

        return inspection.European() is { } eu ?
        [
            eu.Plan is { } plan ? string.Create(CultureInfo.InvariantCulture, $"Plan: of a batch of {inspection.LotSize:#,0} packages {plan.First} are weighed{(inspection.Spoils ? ", testing spoils the package" : "")}; up to {plan.FirstAccept} below T1 pass, from {plan.FirstReject} on they do not{(plan.Second > 0 ? $", in between {plan.Second} more are weighed and up to {plan.Accept} of both pass" : "")}.")
                : string.Create(CultureInfo.InvariantCulture, $"Plan: a batch of {inspection.LotSize:#,0} packages is weighed whole."),
            string.Create(CultureInfo.InvariantCulture, $"Mean: {eu.Mean:0.00} g, standard deviation {eu.Deviation:0.00} g; at least {eu.LeastMean:0.00} g is asked: {(eu.IsMeanEnough ? "reached" : "not reached")}."),
            string.Create(CultureInfo.InvariantCulture, $"Below T1 ({eu.First:0.0} g): {eu.Inadequate}. Below T2 ({eu.Second:0.0} g): {eu.BelowSecond}; a package below it may not bear the mark e."),
        ] : [];
    }

    private static void Head(Leaf leaf, ContentInspection i, PrintHead head)
    {
        string G(double grams) => grams.ToString("#,0.0##", CultureInfo.InvariantCulture) + " g";
        (string, string)[] pairs =
        [
            ("Product", $"{i.ProductName} ({i.Product})"), ("Lot", i.Lot.Length > 0 ? i.Lot : "not said"),
            ("Label", i.IsInPounds ? FormattableString.Invariant($"{i.Label.Pounds:0.##} lb ({G(i.LabelGrams)})") : G(i.LabelGrams)), ("Packages in it", i.LotSize.ToString("#,0", CultureInfo.InvariantCulture)),
            ("Rules", i.Rules == NetRules.US ? "United States" : "European Union"), ("Empty package", $"{G(i.TareGrams)}{(i.TareFrom.Length > 0 ? ": " + i.TareFrom : "")}"),
            ("Sampled", $"{head.Say(i.SampledAt)} by {i.SampledBy}"), ("Weights", i.From.Length > 0 ? i.From : "typed"),
        ];
        for (var n = 0; n < pairs.Length; n += 2)
        {
            leaf.Row(Pairs, [pairs[n].Item1, pairs[n].Item2, pairs[n + 1].Item1, pairs[n + 1].Item2], ruled: false);
        }

        leaf.Gap(6);
    }

    private static void Weights(Leaf leaf, ContentInspection i, IReadOnlyList<double> gross, string words, int before)
    {
        leaf.Text(words, 11, bold: true);
        leaf.Row(Columns, ["no.", "gross", "net", "no.", "gross", "net", ""], bold: true);
        var half = (gross.Count + 1) / 2;
        for (var n = 0; n < half; n++)
        {
            leaf.Row(Columns, [.. Cells(n), .. n + half < gross.Count ? Cells(n + half) : ["", "", ""], ""], ruled: false);
        }

        leaf.Gap(6);

        string[] Cells(int n) => [(before + n + 1).ToString(CultureInfo.InvariantCulture), gross[n].ToString("#,0.0", CultureInfo.InvariantCulture), (gross[n] - i.TareGrams).ToString("#,0.0", CultureInfo.InvariantCulture)];
    }
}
