using System.Globalization;
using Evengrist.Tracing.Recall;

namespace Evengrist.Plant.Prints;

/// <summary>A recall as PDF: a notice for each consignee, and for the mill's own file the summary before them.</summary>
public static class RecallPackPdf
{
    /// <summary>Most packages set out one by one in the summary; the file for programs has all.</summary>
    public const int MostPackages = 1500;

    private static readonly double[] Notice = [0.30, 0.16, 0.20, -0.14, 0.20], Counted = [0.34, 0.22, 0.22, 0.22], Nets = [0.34, -0.12, -0.18, -0.18, -0.18], Packages = [0.18, 0.09, 0.17, -0.09, -0.10, -0.09, -0.11, 0.17];

    /// <summary>The notices alone.</summary>
    /// <param name="notice">What is told.</param>
    /// <param name="deliveries">What went to customers; a notice for each of them.</param>
    /// <param name="head">Whose, on which clock, printed when.</param>
    /// <param name="paper">The sheet.</param>
    public static byte[] Notices(RecallNotice notice, IReadOnlyList<Delivery> deliveries, PrintHead head, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(notice);
        ArgumentNullException.ThrowIfNull(deliveries);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(paper);
        using var leaf = new Leaf(paper, notice.Title, $"{head.Mill}: {notice.Title}, continued");
        Add(leaf, notice, deliveries, head, first: true);
        return leaf.Close(Foot(notice, head));
    }

    /// <summary>The whole pack: summary, nets, balance, packages, what is unknown, and the notices.</summary>
    /// <param name="notice">What is told.</param>
    /// <param name="outcome">The recall.</param>
    /// <param name="net">The net taken.</param>
    /// <param name="deliveries">What of it went to customers.</param>
    /// <param name="asked">What was suspect, a sentence each.</param>
    /// <param name="unknown">What is still unknown, a sentence each.</param>
    /// <param name="head">Whose, on which clock, printed when.</param>
    /// <param name="paper">The sheet.</param>
    public static byte[] Pack(
        RecallNotice notice, RecallOutcome outcome, Net net, IReadOnlyList<Delivery> deliveries, IReadOnlyList<string> asked, IReadOnlyList<string> unknown, PrintHead head, PaperSize paper)
    {
        ArgumentNullException.ThrowIfNull(notice);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(net);
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(unknown);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentNullException.ThrowIfNull(paper);
        using var leaf = new Leaf(paper, notice.IsIssued ? $"Recall {notice.Number}" : "Recall, draft", $"{head.Mill}: {(notice.IsIssued ? $"recall {notice.Number}" : "recall, draft")}, continued");
        leaf.Text(head.Mill + (head.IsDemonstration ? " (an invented mill)" : ""), 10, bold: true, gap: 0);
        leaf.Text(notice.IsIssued ? $"Recall {notice.Number}" : "Recall: DRAFT, not issued", 18, bold: true, gap: 4);
        foreach (var line in asked)
        {
            leaf.Text("Suspect: " + line);
        }

        leaf.Text($"Reason: {(notice.Reason.Length > 0 ? notice.Reason : "not given yet")}");
        leaf.Text($"Data as of {head.Say(outcome.AsOf)}. Traced {Kg(outcome.Traced.Expected)} kg, each gram once. Nobody sees how grain leaves a bin: expected is weighed by beliefs in three ways of outflow; bounds hold for any way.", gap: 6);
        leaf.Row(Nets, ["net", "packages", "whole, kg", "expected outside, kg", "chance of missing, %"], bold: true);
        foreach (var one in outcome.Nets)
        {
            leaf.Row(Nets, [$"{one.Kind}{(one.Kind == net.Kind ? " (taken)" : "")}", N(one.Packages.Count), N(one.Balance.Made.Kilograms), Kg(one.ExpectedOutside), (100 * one.ChanceOfMissing).ToString("0.#", CultureInfo.InvariantCulture)]);
        }

        leaf.Gap(4);
        leaf.Text($"Over the threshold: more than {outcome.Question.Threshold.Kilograms.ToString("0.###", CultureInfo.InvariantCulture)} kg. Chance of the narrow net: {(100 * outcome.Question.Chance).ToString("0.#", CultureInfo.InvariantCulture)} %. What no hypothesis describes is not in the chance of missing: under some outflow {N(net.CanBeMissed)} packages outside the net taken can hold more than the threshold.");
        var b = net.Balance;
        leaf.Text($"Balance of the net taken: made (A) {N(b.Made.Kilograms)} kg, in stock (B) {N(b.Stock.Kilograms)} of which on hold {N(b.Held.Kilograms)}, shipped (C) {N(b.Shipped.Kilograms)}, used (D) {N(b.Used.Kilograms)}; accounted for 100·(B + C + D)/A = {(b.EffectivenessPercent?.ToString("0.00", CultureInfo.InvariantCulture) ?? "–")} % (more than 100 is as much a failure as less).", gap: 6);
        leaf.Row(Packages, ["package", "product", "made", "least, kg", "expected", "most", "most, any outflow", "where"], bold: true);
        foreach (var package in net.Packages.Take(MostPackages))
        {
            leaf.Row(Packages, [package.Place.Code, package.Place.Material, head.Say(package.Made), Kg(package.Grams.Least), Kg(package.Grams.Expected), Kg(package.Grams.Most), Kg(package.Bound.Most), (package.Hold is null ? "" : "HOLD ") + (package.Where?.Code ?? "in stock")]);
        }

        if (net.Packages.Count > MostPackages)
        {
            leaf.Text($"and {N(net.Packages.Count - MostPackages)} more: see the CSV list.");
        }

        leaf.Gap(6);
        leaf.Text("Still unknown", 11, bold: true);
        foreach (var sentence in unknown)
        {
            leaf.Text("– " + sentence);
        }

        leaf.Text("Figures are reckoned from the ledger and advise only: a named person decides on holding, recalling and releasing; local law and the site's food-safety plan prevail. A negative test does not clear a lot.", 8.5);
        leaf.Sign("Decided by (name, date, time)", "Authority told (name, date, time)");
        Add(leaf, notice, deliveries, head, first: false);
        return leaf.Close(Foot(notice, head));
    }

    private static void Add(Leaf leaf, RecallNotice notice, IReadOnlyList<Delivery> deliveries, PrintHead head, bool first)
    {
        foreach (var customer in deliveries.GroupBy(d => d.Customer))
        {
            if (!first)
            {
                leaf.NewPage();
            }

            first = false;
            Delivery[] lines = [.. customer];
            leaf.Text(head.Mill + (head.IsDemonstration ? " (an invented mill)" : ""), 10, bold: true, gap: 0);
            leaf.Text(notice.Title, 16, bold: true, gap: 2);
            leaf.Text("To: " + string.Join(" · ", new[] { customer.Key.Code, customer.Key.Name, customer.Key.Of }.Where(w => w.Length > 0)), 11, bold: true, gap: 6);
            foreach (var paragraph in notice.Paragraphs(head.Mill, lines))
            {
                leaf.Text(paragraph, 9.5, gap: 3);
            }

            leaf.Gap(4);
            leaf.Row(Notice, ["package", "product", "made", "delivered, kg", "left the mill"], bold: true);
            foreach (var line in lines)
            {
                leaf.Row(Notice, [line.Package.Code, line.Package.Material, head.Say(line.Made), N(line.Mass.Kilograms), head.Say(line.Left)]);
            }

            leaf.Gap(8);
            leaf.Row(Counted, ["found and held, kg", "used, kg, into what", "sent on, kg, to whom", "not found, kg"], bold: true);
            leaf.Row(Counted, ["\u00a0", "\u00a0", "\u00a0", "\u00a0"]);
            leaf.Sign(notice.IsIssued ? $"Issued by {notice.IssuedBy}, {head.Say(notice.IssuedAt!.Value)}" : "Issued by (name, date, time)", "Received and done (name, date, time)");
        }
    }

    private static string Foot(RecallNotice notice, PrintHead head) => $"{notice.Title}. Printed {head.Say(head.Printed)} ({head.Zone.Id}).";

    private static string Kg(double grams) => grams < 500 && grams > 0 ? "< 1" : (grams / 1000).ToString("N0", CultureInfo.InvariantCulture);

    private static string N(decimal number) => number.ToString("#,0.###", CultureInfo.InvariantCulture);

    private static string N(int number) => number.ToString("N0", CultureInfo.InvariantCulture);
}
