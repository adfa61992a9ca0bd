using Evengrist.Milling.Solving;
using Matrix = MathNet.Numerics.LinearAlgebra.Matrix<double>;

namespace Evengrist.Milling.Response;

/// <summary>How what probes count changes as knobs are turned, loops and loads taken through: exact to first order at a solved mill.</summary>
/// <remarks>
/// The adjoint of the mill at held loads says what a unit of stock anywhere comes to at each probe; what a knob does at once is weighed with it. Loads change what rolls and cloths do: their change follows from one small linear system over the passages.
/// </remarks>
internal sealed class MillResponse
{
    private readonly ProbeRows changes;

    private MillResponse(ProbeRows changes) => this.changes = changes;

    /// <summary>Change of the dry matter of a part counted at a probe, t/h, for each unit a knob is turned: of a factor its logarithm, of a share the share.</summary>
    public double this[int probe, int part, int knob] => changes[probe, part, knob];

    /// <summary>The response of a solved mill.</summary>
    /// <param name="run">The mill, solved.</param>
    /// <param name="probes">Where is counted.</param>
    /// <param name="knobs">What is turned.</param>
    public static MillResponse Of(MillRun run, IReadOnlyList<Probe> probes, IReadOnlyList<Knob> knobs)
    {
        var passages = run.Model.Ways.Passages.Length;
        var weighing = new Weighing(run, knobs);
        var (direct, byLoad) = (new ProbeRows(probes.Count, knobs.Count), new ProbeRows(probes.Count, passages));
        Probe[] counted = [.. probes];
        for (var f = 0; f < counted.Length; f += UnitWorth.Wide)
        {
            weighing.Weigh(counted.AsSpan(f, Math.Min(UnitWorth.Wide, counted.Length - f)), f, direct, byLoad);
        }

        direct.Add(byLoad, LoadsMoved(run, weighing, knobs.Count));
        return new MillResponse(direct);
    }

    // By passage, the change of its load for each knob: (1 − what loads do to loads)⁻¹ of what the knobs do to them at once.
    private static double[][] LoadsMoved(MillRun run, Weighing weighing, int knobs)
    {
        Probe[] feeds = [.. Enumerable.Range(0, run.Model.Ways.Passages.Length).Select(p => Probe.OfPassage(run, p))];
        var (byKnob, byLoad) = (new ProbeRows(UnitWorth.Wide, knobs), new ProbeRows(UnitWorth.Wide, feeds.Length));
        var (atOnce, loops) = (new double[feeds.Length][], new double[feeds.Length][]);
        for (var p = 0; p < feeds.Length; p += UnitWorth.Wide)
        {
            var some = feeds.AsSpan(p, Math.Min(UnitWorth.Wide, feeds.Length - p));
            byKnob.Clear();
            byLoad.Clear();
            weighing.Weigh(some, 0, byKnob, byLoad);
            for (var lane = 0; lane < some.Length; lane++)
            {
                (atOnce[p + lane], loops[p + lane]) = (byKnob.Total(lane), byLoad.Total(lane));
            }
        }

        foreach (var (knob, passage, load) in weighing.FromOutside)
        {
            atOnce[passage][knob] += load;
        }

        var back = (Matrix.Build.DenseIdentity(feeds.Length) - Matrix.Build.DenseOfRowArrays(loops)).Inverse();
        double[][] moved = [.. feeds.Select(_ => new double[knobs])];
        for (var i = 0; i < moved.Length; i++)
        {
            for (var p = 0; p < moved.Length; p++)
            {
                Lanes.Add(moved[i], atOnce[p], back[i, p]);
            }
        }

        return moved;
    }
}
