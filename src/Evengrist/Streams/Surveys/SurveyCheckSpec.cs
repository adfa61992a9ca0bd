using System.Globalization;

namespace Evengrist.Streams.Surveys;

/// <summary>A survey to be held against the weighers of its flours. Page: docs/model/reconciliation.md.</summary>
/// <param name="Survey">The survey; its spouts say where each stream went.</param>
/// <param name="Flours">What was weighed and read of the flours meanwhile.</param>
public sealed record SurveyCheckSpec(StreamSurvey Survey, IReadOnlyList<WeighedFlour> Flours)
{
    /// <summary>What the rolls got, tempered wheat, t/h; null where it was not weighed.</summary>
    public (double TonnesPerHour, double UncertaintyShare)? OnTheRolls { get; init; }

    /// <summary>What left and is no flour, by-products and what evaporated, t/h; null where it was not weighed.</summary>
    public (double TonnesPerHour, double UncertaintyShare)? NotFlour { get; init; }

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Survey.Faults(),
        .. Flours.Any(f => f.IsTaken) || (OnTheRolls is not null && NotFlour is not null) ? Array.Empty<string>() : ["Nothing is there to hold the survey against: give t/h, ash or protein of a flour, or both what the rolls got and what is no flour."],
        .. Flours.Where(f => f.IsTaken && Survey.StreamsTo(f.Flour).Count == 0).Select(f => $"{f.Flour}: no stream of the survey went there. Say at the survey's spouts which did."),
        .. Flours.GroupBy(f => f.Flour, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: give each flour once."),
        .. Flours.SelectMany(OfFlour), .. Weighed("What the rolls got", OnTheRolls), .. Weighed("What is no flour", NotFlour),
    ];

    private static IEnumerable<string> OfFlour(WeighedFlour flour) =>
    [
        .. Weighed(flour.Flour, flour.TonnesPerHour is { } tonnes ? (tonnes, flour.UncertaintyShare) : null),
        .. flour.AshPercent is { } ash && !StreamTable.CanBeAsh(ash) ? [string.Create(CultureInfo.InvariantCulture, $"{flour.Flour}: ash lies above 0 and at most at 10 %; got {ash} %.")] : Array.Empty<string>(),
        .. flour.ProteinPercent is { } protein && !(protein is > 0 and <= 40) ? [string.Create(CultureInfo.InvariantCulture, $"{flour.Flour}: protein lies above 0 and at most at 40 %; got {protein} %.")] : Array.Empty<string>(),
    ];

    private static IEnumerable<string> Weighed(string what, (double TonnesPerHour, double UncertaintyShare)? weighed)
    {
        if (weighed is { TonnesPerHour: not (> 0 and <= 1000) })
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{what}: it lies above 0 and at most at 1000 t/h; got {weighed.Value.TonnesPerHour}.");
        }

        if (weighed is { UncertaintyShare: not (> 0 and <= 0.5) })
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{what}: its ± of one standard lies above 0 and at most at 50 % of itself; got {100 * weighed.Value.UncertaintyShare} %.");
        }
    }
}
