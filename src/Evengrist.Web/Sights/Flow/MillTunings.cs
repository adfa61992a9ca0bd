using System.Collections.Concurrent;
using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Web.Sights.Flow;

/// <summary>Tunings reckoned lately: a page looked at again does not tune the mill again. What is reckoned can be thrown away.</summary>
public sealed class MillTunings
{
    private const int Most = 12;
    private readonly ConcurrentDictionary<string, Lazy<MillFitOutcome>> kept = new(StringComparer.Ordinal);

    /// <summary>Tunes to tests, or finds the same tuning again.</summary>
    public MillFitOutcome Of(IReadOnlyList<MillTest> tests)
    {
        ArgumentNullException.ThrowIfNull(tests);
        if (kept.Count >= Most)
        {
            kept.Clear();
        }

        return kept.GetOrAdd(string.Join('\n', tests.Select(Words)), _ => new Lazy<MillFitOutcome>(() => MillFit.Of(tests))).Value;
    }

    private static string Words(MillTest test) => string.Join('|', [FlowSheetJson.Write(test.Sheet), Wheat(test.Wheat), .. test.Streams.Select(s => $"{s}"), .. test.Releases.Select(r => $"{r}"), .. test.Sieves.Select(s => $"{s}")]);

    private static string Wheat(MillWheat wheat) => FormattableString.Invariant($"{wheat.DryTonnesPerHour:R} {wheat.MoisturePercent:R} ") + string.Join(' ', wheat.Kernels.Select(k => $"{k}").Concat(wheat.Parts.Select(p => $"{p}")));
}
