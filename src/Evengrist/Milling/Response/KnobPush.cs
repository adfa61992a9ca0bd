using Evengrist.Milling.Solving;

namespace Evengrist.Milling.Response;

/// <summary>What turning one knob does at once, before it runs through the mill: change of the outlets of its passage, or of where an outlet's stock arrives.</summary>
/// <param name="Passage">The passage.</param>
/// <param name="Outlet">The first of its outlets that changes.</param>
/// <param name="Outlets">Change of that outlet and those behind it, by part and size, for each unit the knob is turned (of a factor: its logarithm).</param>
/// <param name="Load">Change of what enters the passage itself from outside, t/h.</param>
internal sealed record KnobPush(int Passage, int Outlet, double[] Outlets, double Load)
{
    private const double Step = 1e-4;

    /// <summary>The push of a knob that belongs to a passage; a share's is not one.</summary>
    /// <param name="run">The mill, solved.</param>
    /// <param name="turned">Its knobs once more, to be turned to and fro and left as they were.</param>
    /// <param name="knob">What is turned.</param>
    public static KnobPush Of(MillRun run, MillKnobs turned, Knob knob)
    {
        var (ways, feed) = (run.Model.Ways, run.Model.Wheat.DryTonnesPerHour * run.Knobs.Feed);
        var passage = knob.Kind switch
        {
            KnobKind.Cut or KnobKind.Tear => Array.FindIndex(ways.FirstOutlet, f => f > knob.Index) - 1,
            KnobKind.FirstBreak or KnobKind.Feed => ways.First,
            _ => knob.Index,
        };
        var load = knob.Kind is KnobKind.Feed ? feed : 0;

        // A cloth changes what it lets leave and what goes on from it, nothing before it.
        var outlet = knob.Kind is KnobKind.Cut or KnobKind.Tear ? knob.Index : ways.FirstOutlet[passage];
        var push = Difference(run, passage, outlet, sign =>
        {
            Turn(turned, knob, sign > 0 ? Step : -2 * Step);
            return (turned, 0);
        });
        Turn(turned, knob, Step);
        return new KnobPush(passage, outlet, push, load);
    }

    /// <summary>The push of a load: what its rolls and cloths do as a passage carries 1 t/h more of the same stock it has.</summary>
    public static KnobPush OfLoad(MillRun run, int passage)
    {
        var step = Step * Math.Max(run.State.Load[passage], 1e-6);
        var outlet = run.Model.Ways.FirstOutlet[passage];
        var push = Difference(run, passage, outlet, sign => (run.Knobs, sign * step));
        for (var k = 0; k < push.Length; k++)
        {
            push[k] *= Step / step;
        }

        return new KnobPush(passage, outlet, push, 0);
    }

    /// <summary>Knobs with one turned by a factor e^amount, a tear by the amount.</summary>
    public static MillKnobs Turned(MillKnobs knobs, Knob knob, double amount)
    {
        var turned = knobs.Copy();
        Turn(turned, knob, amount);
        return turned;
    }

    /// <summary>Turns one of some knobs by a factor e^amount, a tear by the amount.</summary>
    public static void Turn(MillKnobs knobs, Knob knob, double amount)
    {
        var factor = Math.Exp(amount);
        switch (knob.Kind)
        {
            case KnobKind.Nip: knobs.Nip[knob.Index] *= factor; break;
            case KnobKind.Bran: knobs.Bran[knob.Index] *= factor; break;
            case KnobKind.Cut: knobs.Cut[knob.Index] *= factor; break;
            case KnobKind.Air: knobs.Air[knob.Index] *= factor; break;
            case KnobKind.FirstBreak: knobs.FirstBreak *= factor; break;
            case KnobKind.Feed: knobs.Feed *= factor; break;
            case KnobKind.Tear: knobs.Tear[knob.Index] += amount; break;
            default: throw new ArgumentOutOfRangeException(nameof(knob), knob, "is not turned by a factor");
        }
    }

    private static double[] Difference(MillRun run, int passage, int outlet, Func<int, (MillKnobs Knobs, double Load)> at)
    {
        var (model, ways) = (run.Model, run.Model.Ways);
        var (from, length) = (outlet * model.Width, (ways.FirstOutlet[passage + 1] - outlet) * model.Width);
        var (difference, scratch) = (new double[length], run.Scratch);
        foreach (var sign in (int[])[1, -1])
        {
            var (knobs, load) = at(sign);
            run.State.In.AsSpan(passage * model.Width, model.Width).CopyTo(scratch.In.AsSpan(passage * model.Width, model.Width));
            PassageStep.Run(model, passage, run.State.Load[passage] + load, knobs, scratch, passage == ways.First ? run.BrokenAt(knobs) : []);
            for (var k = 0; k < length; k++)
            {
                difference[k] += sign * scratch.Out[from + k] / (2 * Step);
            }
        }

        return difference;
    }
}
