using System.Globalization;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>One sample on the bench's form.</summary>
/// <param name="Sample">The sample.</param>
/// <param name="Rows">Its tests, each with the last readings of its place and what stands on the sample already.</param>
public sealed record SampleSight(TakenSample Sample, IReadOnlyList<(SampleTest Test, IReadOnlyList<Reading> Last, IReadOnlyList<Reading> Here)> Rows)
{
    /// <summary>The sample with a number; null where there is none by a moment.</summary>
    public static SampleSight? Of(Mill mill, string code, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view => TakenSample.Find(view.Book, code, at) is { } sample
            ? new SampleSight(sample, [.. sample.Sample.Tests.Select(t => (t, EnterResults.LastOf(view.Book, sample, t), (IReadOnlyList<Reading>)[.. sample.Readings.Where(t.Is)]))])
            : null);
    }

    /// <summary>Readings as they were reported: <c>11.9 11.84 % 14mb</c>.</summary>
    public static string Words(IReadOnlyList<Reading> readings) => readings.Count == 0 ? "none"
        : string.Join("; ", readings.GroupBy(r => (r.Unit, r.Basis.IsStated ? r.Basis.ToString() : "")).Select(g => $"{string.Join(", ", g.Select(r => r.Value.ToString(CultureInfo.InvariantCulture)))} {g.Key.Unit} {g.Key.Item2}".TrimEnd()));
}
