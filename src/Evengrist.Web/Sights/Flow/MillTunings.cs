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
    /// <param name="tests">The tests.</param>
    /// <param name="goOn">Told how far it is; false where it is to stop, and then nothing is kept.</param>
    public MillFitOutcome Of(IReadOnlyList<MillTest> tests, Func<string, bool>? goOn = null)
    {
        ArgumentNullException.ThrowIfNull(tests);
        if (kept.Count >= Most)
        {
            kept.Clear();
        }

        var (key, isStopped) = (string.Join('\n', tests.Select(Words)), false);
        var outcome = kept.GetOrAdd(key, _ => new Lazy<MillFitOutcome>(() => MillFit.Of(tests, null, doing => !(isStopped |= goOn?.Invoke(doing) is false)))).Value;
        if (isStopped)
        {
            kept.TryRemove(key, out _);
        }

        return outcome;
    }

    /// <summary>The work of tuning to tests, begun where nobody asked it yet; null where there are so few that a page can wait for it.</summary>
    /// <param name="shelf">Where work is kept.</param>
    /// <param name="mark">What the tests were gathered from.</param>
    /// <param name="tests">The tests.</param>
    public LongWork<MillFitOutcome>? Work(WorkShelf shelf, string mark, IReadOnlyList<MillTest> tests)
    {
        ArgumentNullException.ThrowIfNull(shelf);
        ArgumentNullException.ThrowIfNull(tests);
        return tests.Count < 2 ? null : shelf.WorkOn(mark, nameof(MillTunings), () => LongWork.Begin(
            (tell, stop) => Of(tests, doing =>
            {
                tell(new WorkStep(doing, null));
                return !stop.IsCancellationRequested;
            }),
            why => new MillNotTuned([why])));
    }

    /// <summary>Tuned to tests; not tuned where there are none, or where they do not tune it, with why.</summary>
    public (MillTuning Tuning, IReadOnlyList<string> Untold) OrNone(FlowSheet sheet, IReadOnlyList<MillTest> tests)
    {
        ArgumentNullException.ThrowIfNull(tests);
        return tests.Count == 0 ? (MillTuning.None(sheet), []) : Of(tests) switch
        {
            MillTuned tuned => (tuned.Tuning, []),
            MillNotTuned not => (MillTuning.None(sheet), not.Reasons),
            var other => throw new InvalidOperationException($"Tuning ended as {other.GetType().Name}."),
        };
    }

    private static string Words(MillTest test) => string.Join('|', [FlowSheetJson.Write(test.Sheet), Wheat(test.Wheat), .. test.Streams.Select(s => $"{s}"), .. test.Releases.Select(r => $"{r}"), .. test.Sieves.Select(s => $"{s}")]);

    private static string Wheat(MillWheat wheat) => FormattableString.Invariant($"{wheat.DryTonnesPerHour:R} {wheat.MoisturePercent:R} ") + string.Join(' ', wheat.Kernels.Select(k => $"{k}").Concat(wheat.Parts.Select(p => $"{p}")));
}
