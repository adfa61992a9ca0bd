using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Drift;

/// <summary>A drift that may have begun at one test. Spreads and odds before data are ours.</summary>
/// <param name="Cause">What.</param>
/// <param name="Start">The test from which a step shows; for wear, the test after which it grows.</param>
/// <param name="Column">What one unit of it, by the newest test, does to each figure.</param>
/// <param name="Keys">What one unit of it turns, of the keys with tears; empty for wet feed.</param>
/// <param name="Spread">Its spread before data.</param>
/// <param name="Sign">1 or −1 where it can only be that way, 0 for either.</param>
/// <param name="Odds">Odds before data, against no drift.</param>
internal sealed record DriftCandidate(DriftCause Cause, int Start, Vector<double> Column, IReadOnlyList<int> Keys, double Spread, int Sign, double Odds)
{
    /// <summary>Keys of tears: one for each cloth of the flow sheet.</summary>
    public static IEnumerable<TuneKey> Tears(IReadOnlyList<TuneKey> keys) => keys.Where(k => k.Kind is TuneKind.Cut).Select(k => k with { Kind = TuneKind.Tear });

    /// <summary>Every drift looked for.</summary>
    public static IReadOnlyList<DriftCandidate> All(FlowSheet sheet, IReadOnlyList<TuneKey> keys, IReadOnlyList<DriftRow> rows, IReadOnlyList<DatedTest> tests)
    {
        int[] Where(Func<TuneKey, bool> holds) => [.. keys.Select((k, i) => (k, i)).Where(x => holds(x.k)).Select(x => x.i)];
        var rolls = sheet.Passages.Where(p => p.Rolls is not null).Select(p => (p.Code, Keys: Where(k => k.Where == p.Code && k.Kind is TuneKind.Nip or TuneKind.FirstBreak))).ToArray();
        var sifters = sheet.Passages.Where(p => p.Cloths.Count > 0).Select(p => (p.Code, Keys: Where(k => k.Where == p.Code && k.Kind is TuneKind.Cut))).ToArray();
        return
        [
            .. rolls.SelectMany(r => Starting(new DriftCause(DriftKind.Wear, r.Code), r.Keys, 0.15, -1, 0.3 / rolls.Length, true)),
            .. rolls.SelectMany(r => Starting(new DriftCause(DriftKind.Moved, r.Code), r.Keys, 0.15, 0, 0.15 / rolls.Length, false)),
            .. sifters.SelectMany(s => Starting(new DriftCause(DriftKind.Choke, s.Code), s.Keys, 0.08, -1, 0.15 / sifters.Length, false)),
            .. keys.Select((k, i) => (k, i)).Where(x => x.k.Kind is TuneKind.Tear).SelectMany(x => Starting(new DriftCause(DriftKind.Torn, x.k.Where, x.k.Outlet), [x.i], 0.1, 1, 0.15 / keys.Count(k => k.Kind is TuneKind.Tear), false)),
            .. Starting(new DriftCause(DriftKind.WetFeed, sheet.FirstBreak), [], 0.7, 1, 0.1, false),
        ];

        IEnumerable<DriftCandidate> Starting(DriftCause cause, int[] turned, double spread, int sign, double odds, bool grows)
        {
            var effect = Vector<double>.Build.Dense(rows.Count, i => turned.Length == 0 ? rows[i].ByMoisture : turned.Sum(k => rows[i].ByKey[k]));
            var (first, last) = grows ? (0, tests.Count - 3) : (1, tests.Count - 1);
            for (var start = first; start <= last; start++)
            {
                var from = start;
                var column = Vector<double>.Build.Dense(rows.Count, i => effect[i] * Shape(rows[i].Test, from, grows));
                yield return new DriftCandidate(cause, start, column, turned, spread, sign, odds / (last - first + 1));
            }
        }

        double Shape(int test, int start, bool grows) => test < start ? 0 : !grows ? 1 : (tests[test].At - tests[start].At) / (tests[^1].At - tests[start].At);
    }
}
