using Evengrist.Milling.Response;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>Work of the rolls of a tuned mill, and how it changes with each thing tuning can find.</summary>
/// <param name="Fluted">Of fluted rolls, kW.</param>
/// <param name="Smooth">Of smooth rolls, kW.</param>
/// <param name="Gradient">Change of both together for each unit of each key's logarithm.</param>
internal sealed record RollWork(double Fluted, double Smooth, Vector<double> Gradient)
{
    private const double Step = 1e-3;

    /// <summary>Reckons it: each knob turned a little and the mill solved anew.</summary>
    public static RollWork Of(FlowSheet sheet, MillWheat wheat, MillTuning tuning)
    {
        var run = TunedMill.Of(sheet, wheat, tuning.Keys, tuning.Values);
        var (set, at) = (run.Knobs, Read(run));
        var gradient = Vector<double>.Build.Dense(tuning.Keys.Count);
        for (var i = 0; i < tuning.Keys.Count; i++)
        {
            if (TunedMill.KnobOf(run.Model, tuning.Keys[i]) is { } knob)
            {
                run.Knobs = KnobPush.Turned(set, knob, Step);
                var (fluted, smooth) = Read(run);
                gradient[i] = (fluted + smooth - at.Fluted - at.Smooth) / Step;
            }
        }

        return new RollWork(at.Fluted, at.Smooth, gradient);
    }

    private static (double Fluted, double Smooth) Read(MillRun run)
    {
        var passages = run.Read().Passages;
        return (passages.Where(p => p.Passage.Rolls is { IsFluted: true }).Sum(p => p.RollKilowatts), passages.Where(p => p.Passage.Rolls is { IsFluted: false }).Sum(p => p.RollKilowatts));
    }
}
