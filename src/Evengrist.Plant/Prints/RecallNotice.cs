using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Plant.Prints;

/// <summary>What a consignee is told: the packages, and what to do. It never says that anything is safe.</summary>
/// <param name="Number">Number of the recall; empty while nobody has issued it.</param>
/// <param name="Reason">Why; empty while none is given.</param>
/// <param name="IssuedBy">Who issued it; empty while nobody has.</param>
/// <param name="IssuedAt">When; null while nobody has.</param>
/// <param name="Contact">Whom to answer; empty where it is filled in by hand.</param>
public sealed record RecallNotice(string Number, string Reason, string IssuedBy, Instant? IssuedAt, string Contact)
{
    /// <summary>One that nobody has issued.</summary>
    public static RecallNotice Draft { get; } = new("", "", "", null, "");

    /// <summary>One of a recall that was issued.</summary>
    public static RecallNotice Of(KeptRecall recall)
    {
        ArgumentNullException.ThrowIfNull(recall);
        return new(recall.Number, recall.Reason, recall.By, recall.At, recall.Contact);
    }

    /// <summary>Whether a named person has issued it.</summary>
    public bool IsIssued => IssuedAt is not null;

    /// <summary>Its title.</summary>
    public string Title => IsIssued ? $"Recall notice {Number}" : "Recall notice: DRAFT, not issued";

    /// <summary>What is asked of the consignee, a paragraph each.</summary>
    /// <param name="mill">Name of the mill.</param>
    /// <param name="lines">The packages.</param>
    public IReadOnlyList<string> Paragraphs(string mill, IReadOnlyList<Delivery> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        var kilograms = lines.Sum(l => l.Mass.Kilograms);
        return
        [
            FormattableString.Invariant($"{mill} recalls the {lines.Count} {(lines.Count == 1 ? "package" : "packages")} below, {kilograms:N0} kg in all, delivered to you."),
            $"Reason: {(Reason.Length > 0 ? Reason : "____________________________________________")}",
            "1. Hold every package below now, and all flour taken from them. Mark it so that nobody uses or ships it.",
            "2. Do not use it, do not send it on, and do not destroy it before you are told to.",
            "3. If any was used, mixed, rebagged, given back as rework or sent on: write into what, how much, when and to whom, and tell those who got it.",
            "4. Count what is there, sign below and send this sheet back. Write a zero where nothing is left.",
            "Flour is raw: it is not safe to eat uncooked, and neither is dough. A negative test does not take a package off this list.",
            $"Answer to: {(Contact.Length > 0 ? Contact : "name ____________________  telephone ____________________  mail ____________________")}",
        ];
    }
}
