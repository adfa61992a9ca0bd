using NodaTime;

namespace Evengrist.Mix.Sheets;

/// <summary>The mix as a named person set it for a stretch of time, with what was expected of it as it stood then. A paper, versioned.</summary>
/// <remarks>Page: docs/model/mix.md. What is wrong with it is found by <see cref="MixSheetCheck"/>.</remarks>
public sealed record MixSheet
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "mix";

    /// <summary>Code of the mix line the gates let into.</summary>
    public required string Line { get; init; }

    /// <summary>Code of the flour it is for.</summary>
    public required string Flour { get; init; }

    /// <summary>From when on it holds.</summary>
    public required Instant From { get; init; }

    /// <summary>Until when; after <see cref="From"/>.</summary>
    public required Instant Until { get; init; }

    /// <summary>Wheat through all gates together, t/h, above 0.</summary>
    public required double TonnesPerHour { get; init; }

    /// <summary>Who set it.</summary>
    public required string SetBy { get; init; }

    /// <summary>Why it differs from the best mix; needed where it does.</summary>
    public string Reason { get; init; } = "";

    /// <summary>The open gates.</summary>
    public required IReadOnlyList<SheetGate> Gates { get; init; }

    /// <summary>Step in which a gate can be set, per cent of the mix; null where nobody said.</summary>
    public double? StepPercent { get; init; }

    /// <summary>The best mix as it was found then, share in per cent by bin; empty where none was.</summary>
    public IReadOnlyDictionary<string, double> Best { get; init; } = new Dictionary<string, double>();

    /// <summary>Limits it was set by.</summary>
    public IReadOnlyList<SheetLimit> Limits { get; init; } = [];

    /// <summary>What was expected of wheat and flour.</summary>
    public IReadOnlyList<SheetExpected> Expected { get; init; } = [];

    /// <summary>Currency of the costs, three letters; empty where there are none.</summary>
    public string Currency { get; init; } = "";

    /// <summary>What a tonne cost by that day's values; null where nobody reckoned it.</summary>
    public double? CostToday { get; init; }

    /// <summary>What it cost the year; null where there was no plan.</summary>
    public double? CostOfTheYear { get; init; }

    /// <summary>What the best mix cost, by the cost that was kept least; null where none was found.</summary>
    public double? BestCost { get; init; }

    /// <summary>Bins that were left out, with why.</summary>
    public IReadOnlyList<LeftOut> LeftOut { get; init; } = [];

    /// <summary>What else has to be known at the gates, each a sentence.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];

    /// <summary>Why it was withdrawn; empty for one that stands.</summary>
    public string Withdrawn { get; init; } = "";

    /// <summary>Whether it stands.</summary>
    public bool Stands => Withdrawn.Length == 0;

    /// <summary>How long it holds, h.</summary>
    public double Hours => (Until - From).TotalHours;

    /// <summary>Gates with their shares, 0 to 1.</summary>
    public IReadOnlyList<(MixBin Bin, double Share)> Parts => [.. Gates.Select(g => (g.AsBin(), g.SharePercent / 100))];

    /// <summary>What a gate is set to, t/h.</summary>
    public double SetRate(SheetGate gate)
    {
        ArgumentNullException.ThrowIfNull(gate);
        return gate.DialTonnesPerHour ?? gate.SharePercent / 100 * TonnesPerHour;
    }

    /// <summary>Whether it differs from the best mix by more than a twentieth of a point at any gate.</summary>
    public bool IsOffBest => Best.Count > 0 && Gates.Select(g => g.Bin).Union(Best.Keys, StringComparer.OrdinalIgnoreCase)
        .Any(b => Math.Abs((Gates.FirstOrDefault(g => g.Bin.Equals(b, StringComparison.OrdinalIgnoreCase))?.SharePercent ?? 0) - Best.FirstOrDefault(p => p.Key.Equals(b, StringComparison.OrdinalIgnoreCase)).Value) > 0.05);

    /// <summary>What its own gates lead one to expect: every property that blends and is known of all of them, on the basis of the first.</summary>
    public IReadOnlyList<SheetExpected> ExpectedOfGates()
    {
        var known = Gates.Count > 0 ? Gates[0].Values : [];
        return [.. known.Where(v => BlendRules.Of(v.What) is not null).Select(v => MixBlend.WheatOf(Parts, v.What, v.Basis)).OfType<Predicted>().Select(SheetExpected.Of)];
    }
}
