using Evengrist.Records.Laboratory;

namespace Evengrist.Web.Api;

/// <summary>What made a flour of a bake, by the ledger.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="Place">Where it was taken from.</param>
/// <param name="WheatBins">Share of its wheat by bin, a fraction.</param>
/// <param name="MixSheets">Codes of the mix sheets that stood then.</param>
/// <param name="Units">The mill units.</param>
/// <param name="Nothing">Why nothing is known; null where something is.</param>
public sealed record FlourMadeAnswer(string Flour, string? Place, IReadOnlyDictionary<string, double> WheatBins, IReadOnlyList<string> MixSheets, IReadOnlyList<MilledAnswer> Units, string? Nothing)
{
    internal static FlourMadeAnswer Of(string flour, FlourHistory made) => new(
        flour, made.Place?.Code, made.Bins.ToDictionary(b => b.Bin.Code, b => b.Share), [.. made.Mixes.Select(m => m.Code)],
        [.. made.Units.Select(u => new MilledAnswer(u.Passage.Place.Code, u.Passage.From.ToDateTimeOffset(), u.Passage.Until.ToDateTimeOffset(), u.Survey?.Survey.TakenAt.ToDateTimeOffset()))], made.Nothing);
}

/// <summary>When a unit milled a flour.</summary>
/// <param name="Unit">Its code.</param>
/// <param name="From">From when.</param>
/// <param name="Until">Until when.</param>
/// <param name="Survey">When the newest survey of its streams by then was taken; null where none is kept.</param>
public sealed record MilledAnswer(string Unit, DateTimeOffset From, DateTimeOffset Until, DateTimeOffset? Survey);
