using Evengrist.Packing.Dispatch;

namespace Evengrist.Plant.Answers;

/// <summary>A release record in plain values.</summary>
/// <param name="Load">Number of the load; what went together where no load names it.</param>
/// <param name="Consignee">Code of the consignee's place.</param>
/// <param name="At">When it left.</param>
/// <param name="Grams">What left, g.</param>
/// <param name="Lots">Lot by lot.</param>
/// <param name="Items">Every item, in the order of the rule.</param>
/// <param name="Missing">Names of the items that are demanded and not there.</param>
public sealed record ReleaseAnswer(string Load, string Consignee, DateTimeOffset At, long Grams, IReadOnlyList<ReleasedLotAnswer> Lots, IReadOnlyList<ReleaseItemAnswer> Items, IReadOnlyList<string> Missing)
{
    /// <summary>A record in plain values.</summary>
    public static ReleaseAnswer Of(ReleaseRecord record)
    {
        ArgumentNullException.ThrowIfNull(record);
        return new(record.Load, record.Consignee, record.At.ToDateTimeOffset(), record.Mass.Grams, [.. record.Lots.Select(l => new ReleasedLotAnswer(l.Food, l.Lot, l.PackedAs, l.Mass.Grams, l.Packages))],
            [.. record.Items.Select(i => new ReleaseItemAnswer(i.Rule, i.What, i.Text, i.Demanded))], record.Missing);
    }
}

/// <summary>A release record with the sources of its ingredients, 21 CFR 1.345(b); kilograms reckoned.</summary>
/// <param name="Record">The record.</param>
/// <param name="Sources">Its sources, the largest first.</param>
public sealed record SourcedReleaseAnswer(ReleaseAnswer Record, IReadOnlyList<ReleaseSourceAnswer> Sources)
{
    /// <summary>It in plain values.</summary>
    public static SourcedReleaseAnswer Of(ReleaseRecord record, IReadOnlyList<ReleaseSource> sources)
    {
        ArgumentNullException.ThrowIfNull(sources);
        return new(ReleaseAnswer.Of(record), [.. sources.Select(s => new ReleaseSourceAnswer(s.Origin.Code, s.Origin.Kind.ToString(), s.Origin.Of, s.Truck?.Code ?? "", Math.Round(s.ExpectedKilograms, 3), Math.Round(s.MostKilograms, 3)))]);
    }
}

/// <summary>A source of what was released.</summary>
public sealed record ReleaseSourceAnswer(string Origin, string Kind, string Of, string Truck, double ExpectedKilograms, double MostKilograms);

/// <summary>What of one lot was released together.</summary>
public sealed record ReleasedLotAnswer(string Food, string Lot, string PackedAs, long Grams, IReadOnlyList<string> Packages);

/// <summary>One item of a record.</summary>
public sealed record ReleaseItemAnswer(string Rule, string What, string Text, bool Demanded);
