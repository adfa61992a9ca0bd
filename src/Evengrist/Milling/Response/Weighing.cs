using System.Numerics;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Response;

/// <summary>What knobs and loads do at once in a solved mill, weighed with what that is worth at probes, loads held.</summary>
internal sealed class Weighing
{
    private readonly MillRun run;
    private readonly UnitWorth worth;
    private readonly IReadOnlyList<Knob> knobs;
    private readonly KnobPush[] loads;
    private readonly KnobPush?[] pushes;

    public Weighing(MillRun run, IReadOnlyList<Knob> knobs)
    {
        var turned = run.Knobs.Copy();
        (this.run, this.knobs, worth) = (run, knobs, new UnitWorth(run));
        loads = [.. Enumerable.Range(0, run.Model.Ways.Passages.Length).Select(p => KnobPush.OfLoad(run, p))];
        pushes = [.. knobs.Select(k => k.Kind is KnobKind.Share ? null : KnobPush.Of(run, turned, k))];
    }

    /// <summary>Change of what enters a passage itself from outside, for each knob, t/h.</summary>
    public IEnumerable<(int Knob, int Passage, double Load)> FromOutside => pushes.Index().Where(p => p.Item is { Load: not 0 }).Select(p => (p.Index, p.Item!.Passage, p.Item.Load));

    /// <summary>Adds what each knob and each load does at once to some probes.</summary>
    /// <param name="probes">Up to <see cref="UnitWorth.Wide"/> of them.</param>
    /// <param name="f">The first one's place in the rows.</param>
    /// <param name="byKnob">Rows by knob.</param>
    /// <param name="byLoad">Rows by passage, for each t/h more it carries of the stock it has.</param>
    public void Weigh(ReadOnlySpan<Probe> probes, int f, ProbeRows byKnob, ProbeRows byLoad)
    {
        worth.Solve(probes);
        for (var p = 0; p < loads.Length; p++)
        {
            Push(loads[p], byLoad, f, p);
        }

        for (var j = 0; j < pushes.Length; j++)
        {
            if (pushes[j] is { } push)
            {
                Push(push, byKnob, f, j);
            }
            else
            {
                Move(knobs[j].Index, probes, byKnob, f, j);
            }
        }
    }

    private void Push(KnobPush push, ProbeRows into, int f, int column)
    {
        var (width, n) = (run.Model.Width, run.Model.Classes.Count);
        for (int outlet = push.Outlet, at = 0; at < push.Outlets.Length; outlet++, at += width)
        {
            var value = worth.OutOf(outlet);
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                into.Row(f, part)[column] += UnitWorth.Dot(push.Outlets.AsSpan(at + (part * n), n), value.Slice(part * n, n));
            }
        }
    }

    // A share more of an outlet one way, the others of the outlet giving way in proportion.
    private void Move(int way, ReadOnlySpan<Probe> probes, ProbeRows into, int f, int column)
    {
        var (ways, width, n) = (run.Model.Ways, run.Model.Width, run.Model.Classes.Count);
        var (outlet, share) = (ways.Ways[way].Outlet, run.Knobs.Shares[way]);
        var stock = run.State.Out.AsSpan(outlet * width, width);
        foreach (var other in ways.OutOf[outlet])
        {
            var amount = other == way ? 1 : share < 1 ? -run.Knobs.Shares[other] / (1 - share) : 0;
            for (var lane = 0; lane < probes.Length; lane++)
            {
                if (probes[lane].Counts(ways.Ways[other]))
                {
                    for (var part = 0; part < MillWheat.PartCount; part++)
                    {
                        into.Row(f, part)[column] += Vector.WithElement(Vector<double>.Zero, lane, amount * Lanes.Sum(stock.Slice(part * n, n)));
                    }
                }
            }

            if (ways.Ways[other].To >= 0)
            {
                for (var part = 0; part < MillWheat.PartCount; part++)
                {
                    into.Row(f, part)[column] += UnitWorth.Dot(stock.Slice(part * n, n), worth.Into(ways.Ways[other].To).Slice(part * n, n)) * amount;
                }
            }
        }
    }
}
