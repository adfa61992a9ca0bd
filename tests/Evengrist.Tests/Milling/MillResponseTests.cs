using Evengrist.Milling.Response;
using Evengrist.Milling.Solving;
using Evengrist.Milling.Stock;

namespace Evengrist.Tests.Milling;

/// <summary>The response of a mill to its knobs, against solving it anew a little to either side.</summary>
public sealed class MillResponseTests
{
    private static readonly MillModel Model = MillModel.Of(SmallMill.Sheet, SmallMill.Wheat);

    public static TheoryData<int> Kinds => [.. Enum.GetValues<KnobKind>().Where(k => k is not KnobKind.None).Select(k => (int)k)];

    [Theory]
    [MemberData(nameof(Kinds))]
    public void Response_OfEveryKnob_IsWhatSolvingAnewSays(int kind)
    {
        var run = new MillRun(Model);
        run.Solve();
        Probe[] probes = [.. Enumerable.Range(0, Model.Ways.Products.Length).Select(k => Probe.OfProduct(run, k)), .. Enumerable.Range(0, Model.Ways.Passages.Length).Select(p => Probe.OfPassage(run, p))];
        var count = (KnobKind)kind switch { KnobKind.Cut => Model.Ways.OutletCount, KnobKind.Share => Model.Ways.Ways.Length, KnobKind.FirstBreak or KnobKind.Feed => 1, _ => Model.Ways.Passages.Length };
        Knob[] knobs = [.. Enumerable.Range(0, count).Select(i => new Knob((KnobKind)kind, i)).Where(k => k.Kind is not KnobKind.Share || run.Knobs.Shares[k.Index] < 1)];
        var response = MillResponse.Of(run, probes, knobs);
        for (var j = 0; j < knobs.Length; j++)
        {
            var (up, down) = (Counted(probes, knobs[j], 1e-4), Counted(probes, knobs[j], -1e-4));
            for (var f = 0; f < probes.Length; f++)
            {
                for (var part = 0; part < MillWheat.PartCount; part++)
                {
                    var anew = (up[f, part] - down[f, part]) / 2e-4;
                    Assert.InRange(response[f, part, j] - anew, -2e-5, 2e-5);
                }
            }
        }
    }

    private static double[,] Counted(Probe[] probes, Knob knob, double amount)
    {
        var run = new MillRun(Model);
        if (knob.Kind is KnobKind.Share)
        {
            var share = run.Knobs.Shares[knob.Index];
            foreach (var way in Model.Ways.OutOf[Model.Ways.Ways[knob.Index].Outlet])
            {
                run.Knobs.Shares[way] *= way == knob.Index ? 1 : 1 - (amount / (1 - share));
            }

            run.Knobs.Shares[knob.Index] += amount;
        }
        else
        {
            run.Knobs = KnobPush.Turned(run.Knobs, knob, amount);
        }

        run.Solve();
        var counted = new double[probes.Length, MillWheat.PartCount];
        for (var f = 0; f < probes.Length; f++)
        {
            var ways = probes[f].Product >= 0 ? Model.Ways.IntoProduct[probes[f].Product] : Model.Ways.Into[probes[f].Passage];
            for (var part = 0; part < MillWheat.PartCount; part++)
            {
                counted[f, part] = ways.Sum(w => run.Knobs.Shares[w] * Lanes.Sum(run.State.Out.AsSpan((Model.Ways.Ways[w].Outlet * Model.Width) + (part * Model.Classes.Count), Model.Classes.Count)));
            }
        }

        return counted;
    }
}
