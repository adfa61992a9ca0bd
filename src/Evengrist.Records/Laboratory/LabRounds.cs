using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records.Browsing;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Results of one test of a sample that were recorded together: duplicates of one another. A later round is a retest and stands beside the earlier.</summary>
/// <param name="Test">The test.</param>
/// <param name="Readings">Its readings, in the order they were recorded.</param>
/// <param name="By">Who recorded them.</param>
/// <param name="Recorded">When.</param>
/// <param name="Note">What was asked and answered; empty where nothing was.</param>
/// <param name="IsRetest">Whether an earlier round of the test stands on the sample.</param>
/// <param name="Judged">What they come to.</param>
public sealed record LabRound(SampleTest Test, IReadOnlyList<Reading> Readings, string By, Instant Recorded, string Note, bool IsRetest, DuplicateOutcome Judged);

/// <summary>The rounds of results of samples.</summary>
public static class LabRounds
{
    private const int Most = 1000;

    /// <summary>Every round on a sample, the earliest first.</summary>
    public static IReadOnlyList<LabRound> Of(Mill mill, TakenSample sample, LabMethods methods)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sample);
        ArgumentNullException.ThrowIfNull(methods);
        var lines = mill.Facts(new FactFilter { Place = sample.Place.Code, Sort = FactSort.Reading, From = sample.At, Until = sample.At + Duration.FromTicks(10), Size = Most }).Lines;
        var seen = new HashSet<(Property, string)>();
        return [.. TogetherIn(lines).Select(g =>
        {
            var (first, test) = (g[0], new SampleTest(g[0].Reading.What, g[0].Reading.Method));
            Reading[] readings = [.. g.Select(m => m.Reading)];
            var isRetest = !seen.Add((test.What, test.Method.ToUpperInvariant()));
            return new LabRound(test, readings, first.Attribution.By, first.Attribution.Recorded, first.Attribution.Note ?? "", isRetest, DuplicatesModel.Judge([.. readings.Select(r => r.Value)], methods.Of(test.Method, test.What)?.Repeatability));
        })];
    }

    /// <summary>What was recorded together of one test of one sample, in the order it was recorded.</summary>
    internal static IEnumerable<Measured[]> TogetherIn(IEnumerable<FactLine> lines) => lines.Where(l => l.Counts).Select(l => l.Fact).OfType<Measured>().OrderBy(m => m.Id)
        .GroupBy(m => (m.Reading.On, m.Reading.At, m.Reading.What, Method: m.Reading.Method.ToUpperInvariant(), m.Attribution.Recorded, m.Attribution.By, Entry: EntryOf(m.Attribution.SourceKey))).Select(g => g.ToArray());

    // Keys of one entry differ in their last word alone.
    private static string EntryOf(string key) => key.LastIndexOf(' ') is >= 0 and var end ? key[..end] : key;
}
