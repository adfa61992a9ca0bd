using Evengrist.Streams.Additions;

namespace Evengrist.Packing.Rework;

/// <summary>The run that rework is to go into.</summary>
/// <param name="Flour">Its flour.</param>
public sealed record ReworkRun(string Flour)
{
    /// <summary>Flour of the run without the rework, t/h; null where it does not run.</summary>
    public double? TonnesPerHour { get; init; }

    /// <summary>Allergens its label names beyond wheat.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Whether it is enriched.</summary>
    public bool IsEnriched { get; init; }

    /// <summary>What averages by mass of both, with the ends the flour has to keep.</summary>
    public IReadOnlyList<ReworkedValue> Values { get; init; } = [];

    /// <summary>What is wrong with it, each a sentence.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Flour) ? ["Say into which flour."] : Array.Empty<string>(), .. TonnesPerHour is null or (> 0 and <= 1000) ? Array.Empty<string>() : ["The run's flour lies above 0 to 1000 t/h."],
        .. Values.Where(v => !double.IsFinite(v.OfRun) || !double.IsFinite(v.OfRework) || v.Least > v.Most).Select(v => $"{v.What}: give a value of the run and of the rework, and a least below the most."),
    ];
}
