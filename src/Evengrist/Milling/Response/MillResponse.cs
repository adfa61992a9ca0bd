using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Response;

/// <summary>How what probes count changes as knobs are turned, loops and loads taken through: exact to first order at a solved mill.</summary>
/// <remarks>
/// The adjoint of the mill at held loads says what a unit of stock anywhere comes to at each probe; what a knob does at once is weighed with it. Loads change what rolls and cloths do: their change follows from one small linear system over the passages.
/// </remarks>
internal sealed class MillResponse
{
    private readonly Columns changes;

    private MillResponse(Columns changes) => this.changes = changes;

    /// <summary>Change of the dry matter of a part counted at a probe, t/h, for each unit a knob is turned: of a factor its logarithm, of a share the share.</summary>
    public double this[int probe, int part, int knob] => changes.Row(probe, part)[knob];

    /// <summary>The response of a solved mill.</summary>
    /// <param name="run">The mill, solved.</param>
    /// <param name="probes">Where is counted.</param>
    /// <param name="knobs">What is turned.</param>
    public static MillResponse Of(MillRun run, IReadOnlyList<Probe> probes, IReadOnlyList<Knob> knobs)
    {
        var ways = run.Model.Ways;
        var passages = ways.Passages.Length;
        Probe[] all = [.. probes, .. Enumerable.Range(0, passages).Select(p => Probe.OfPassage(run, p))];
        var worth = new UnitWorth(run);
        KnobPush[] loads = [.. Enumerable.Range(0, passages).Select(p => KnobPush.OfLoad(run, p))];
        KnobPush?[] pushes = [.. knobs.Select(k => k.Kind is KnobKind.Share ? null : KnobPush.Of(run, k))];

        var direct = new Columns(all.Length, knobs.Count);
        var byLoad = new Columns(all.Length, passages);
        for (var f = 0; f < all.Length; f++)
        {
            worth.Solve(all[f]);
            for (var p = 0; p < passages; p++)
            {
                Weigh(run, worth, loads[p], f, p, byLoad);
            }

            for (var j = 0; j < knobs.Count; j++)
            {
                if (pushes[j] is { } push)
                {
                    Weigh(run, worth, push, f, j, direct);
                }
                else
                {
                    Move(run, all[f], worth, knobs[j].Index, f, j, direct);
                }
            }
        }

        var matrix = Matrix<double>.Build.Dense(passages, passages, (i, p) => (i == p ? 1 : 0) - Total(byLoad, probes.Count + i, p));
        var right = Matrix<double>.Build.Dense(passages, knobs.Count, (i, j) => Total(direct, probes.Count + i, j) + (pushes[j] is { } push && push.Passage == i ? push.Load : 0));
        var moved = matrix.LU().Solve(right).ToRowArrays();
        for (var f = 0; f < probes.Count; f++)
        {
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                for (var p = 0; p < passages; p++)
                {
                    Lanes.Add(direct.Row(f, part), moved[p], byLoad.Row(f, part)[p]);
                }
            }
        }

        return new MillResponse(direct);
    }

    private static void Weigh(MillRun run, UnitWorth worth, KnobPush push, int f, int column, Columns into)
    {
        var (ways, width, n) = (run.Model.Ways, run.Model.Width, run.Model.Classes.Count);
        for (int outlet = ways.FirstOutlet[push.Passage], at = 0; outlet < ways.FirstOutlet[push.Passage + 1]; outlet++, at += width)
        {
            var value = worth.OutOf(outlet, width);
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                into.Row(f, part)[column] += Lanes.Dot(push.Outlets.AsSpan(at + (part * n), n), value.Slice(part * n, n));
            }
        }
    }

    // A share more of an outlet one way, the others of the outlet giving way in proportion.
    private static void Move(MillRun run, Probe probe, UnitWorth worth, int way, int f, int column, Columns into)
    {
        var (ways, width, n) = (run.Model.Ways, run.Model.Width, run.Model.Classes.Count);
        var (outlet, share) = (ways.Ways[way].Outlet, run.Knobs.Shares[way]);
        var stock = run.State.Out.AsSpan(outlet * width, width);
        foreach (var other in ways.OutOf[outlet])
        {
            var amount = other == way ? 1 : share < 1 ? -run.Knobs.Shares[other] / (1 - share) : 0;
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                var row = stock.Slice(part * n, n);
                into.Row(f, part)[column] += (probe.Counts(ways.Ways[other]) ? amount * Lanes.Sum(row) : 0)
                    + (ways.Ways[other].To >= 0 ? amount * Lanes.Dot(row, worth.Into(ways.Ways[other].To, width).Slice(part * n, n)) : 0);
            }
        }
    }

    private static double Total(Columns of, int f, int column)
    {
        var sum = 0.0;
        for (var part = 0; part < MillWheat.PartCount; part++)
        {
            sum += of.Row(f, part)[column];
        }

        return sum;
    }

    /// <summary>A row of columns for each part at each probe.</summary>
    private sealed class Columns(int probes, int columns)
    {
        private readonly double[] numbers = new double[probes * MillWheat.PartCount * columns];

        public Span<double> Row(int probe, int part) => numbers.AsSpan(((probe * MillWheat.PartCount) + part) * columns, columns);
    }
}
