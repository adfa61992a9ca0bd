using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;

namespace Evengrist.Intake.Sampling;

/// <summary>The site's own rules for sampling: a paper, versioned.</summary>
public sealed record SamplingPolicy
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "sampling-policy";

    /// <summary>Code of the paper: a mill has one.</summary>
    public const string Code = "SITE";

    /// <summary>What holds where a mill has kept no policy; chosen by design.</summary>
    public static SamplingPolicy Usual { get; } = new();

    /// <summary>From which chance on the side of an edge counts as sure; between 0.5 and 1.</summary>
    public double SureFrom { get; init; } = 0.8;

    /// <summary>Days a retained sample is kept, 1 to 3660.</summary>
    public int KeepDays { get; init; } = 180;

    /// <summary>Shelf offered for a retained sample.</summary>
    public string Shelf { get; init; } = "A";

    /// <summary>Probes a sample is taken to have where none is recorded, at least 1.</summary>
    public int UsualProbes { get; init; } = 7;

    /// <summary>What the site measured of the spread of each property; may be empty.</summary>
    public IReadOnlyList<PropertySpread> Spreads { get; init; } = [];

    /// <summary>What cannot be, each a sentence; empty where all can.</summary>
    public IReadOnlyList<string> Faults() => [.. new[]
    {
        SureFrom is > 0.5 and < 1 ? null : "The chance that settles an edge lies between 0.5 and 1.",
        KeepDays is >= 1 and <= 3660 ? null : "A retained sample is kept 1 to 3660 days.",
        UsualProbes is >= 1 and <= 1000 ? null : "A sample has 1 to 1000 probes.",
    }.OfType<string>(), .. Spreads.SelectMany(s => s.Faults())];

    /// <summary>The policy as JSON.</summary>
    public string ToJson() => SamplingJson.Write(this, indented: true);

    /// <summary>Reads a policy and checks it.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out SamplingPolicy? policy, out IReadOnlyList<string> faults)
    {
        (policy, var fault) = SamplingJson.Read<SamplingPolicy>(json);
        faults = policy is null ? [fault] : policy.Faults();
        policy = faults.Count == 0 ? policy : null;
        return policy is not null;
    }

    /// <summary>The spread the site measured; null where it did not.</summary>
    public PropertySpread? SpreadOf(Property what) => Spreads.FirstOrDefault(s => s.What == what);
}
