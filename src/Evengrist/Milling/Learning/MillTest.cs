using System.Globalization;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Learning;

/// <summary>What was measured at one time in a mill: a stream survey, release tests, sieve analyses, or any of them, with how the mill was set and what wheat it had.</summary>
/// <param name="Name">What it is called, as the day.</param>
/// <param name="Sheet">The flow sheet as it was set then.</param>
/// <param name="Wheat">The wheat then.</param>
public sealed record MillTest(string Name, FlowSheet Sheet, MillWheat Wheat)
{
    /// <summary>Streams surveyed.</summary>
    public IReadOnlyList<StreamReading> Streams { get; init; } = [];

    /// <summary>Releases tested.</summary>
    public IReadOnlyList<ReleaseReading> Releases { get; init; } = [];

    /// <summary>Sieve analyses.</summary>
    public IReadOnlyList<SieveReading> Sieves { get; init; } = [];

    /// <summary>How many figures were measured.</summary>
    public int Count => Streams.Sum(s => 1 + (s.AshPercentDry is null ? 0 : 1) + (s.ProteinPercentDry is null ? 0 : 1)) + Releases.Count + Sieves.Count;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        var products = Sheet.Products.Select(p => p.Code).ToHashSet(StringComparer.Ordinal);
        var rolls = Sheet.Passages.Where(p => p.Rolls is not null).ToDictionary(p => p.Code, StringComparer.Ordinal);
        var together = Streams.Sum(s => s.YieldPercent);
        return
        [
            .. Sheet.Faults(), .. Wheat.Faults(),
            .. Streams.Where(s => !products.Contains(s.Product)).Select(s => $"{Name}: there is no product {s.Product} on the flow sheet. Give the code it has there."),
            .. Streams.GroupBy(s => s.Product, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{Name}: {g.Key} stands there {g.Count()} times: give each stream once."),
            .. Streams.Where(s => !(s.YieldPercent is > 0 and <= 100)).Select(s => $"{Name}: {s.Product} yields {N(s.YieldPercent)} % of the wheat: a yield lies above 0 and is at most 100 %."),
            .. Streams.Where(s => s.AshPercentDry is { } a && !(a is > 0 and <= 15)).Select(s => $"{Name}: {s.Product} has {N(s.AshPercentDry!.Value)} % ash: ash lies above 0 and is at most 15 % of dry matter."),
            .. Streams.Where(s => s.ProteinPercentDry is { } p && !(p is > 0 and <= 45)).Select(s => $"{Name}: {s.Product} has {N(s.ProteinPercentDry!.Value)} % protein: protein lies above 0 and is at most 45 % of dry matter."),
            .. together > 102 ? [$"{Name}: the streams add up to {N(together)} % of the wheat. Look for a weight taken twice or over another time."] : Array.Empty<string>(),
            .. Releases.Select(r => (r.Passage, Percent: r.ReleasePercent)).Concat(Sieves.Select(s => (s.Passage, Percent: s.ThroughPercent))).Where(r => !rolls.ContainsKey(r.Passage)).Select(r => $"{Name}: {r.Passage} is no passage with rolls on the flow sheet."),
            .. Releases.Where(r => rolls.TryGetValue(r.Passage, out var p) && p.ScalpOutlet is null).Select(r => $"{Name}: {r.Passage} has no cloth whose overs leave, so it has no release."),
            .. Releases.Select(r => (r.Passage, Percent: r.ReleasePercent)).Concat(Sieves.Select(s => (s.Passage, Percent: s.ThroughPercent))).Where(r => !(r.Percent is > 0 and < 100)).Select(r => $"{Name}: {r.Passage} tests {N(r.Percent)} %: a release or what falls through lies between 0 and 100 %."),
            .. Sieves.Where(s => !(s.ApertureMicrometres is >= 20 and <= SizeClasses.Most)).Select(s => $"{Name}: a test sieve of {N(s.ApertureMicrometres)} µm at {s.Passage}: apertures lie from 20 to 4000 µm."),
            .. Count == 0 ? [$"{Name}: nothing was measured. Enter a survey, a release test or a sieve analysis."] : Array.Empty<string>(),
        ];
    }

    private static string N(double number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}
