using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.Solving;

/// <summary>A solved mill read off: stock, water and damaged starch of every passage and product.</summary>
internal sealed class MillReading(MillModel model, MillKnobs knobs, MillState state)
{
    private readonly int width = model.Width;
    private readonly MillWays ways = model.Ways;

    private double Wheat => model.Wheat.DryTonnesPerHour * knobs.Feed;

    private double WheatWater => Wheat * model.Wheat.MoisturePercent / (100 - model.Wheat.MoisturePercent);

    public MillSolution Of(MillReport report)
    {
        var work = ways.Passages.Select((_, p) => Broken(p)).ToArray();
        var water = MillScalar.Of(model, knobs, state, [.. ways.Passages.Select((_, p) => p == ways.First ? WheatWater * (1 - model.Parameters.Evaporation) : 0)], 1 - model.Parameters.Evaporation, MillWheat.PartCount);
        var damaged = MillScalar.Of(model, knobs, state, [.. work.Select((w, p) => w.Endosperm * (Fluted(p) ? model.Parameters.FlutedDamage : model.Parameters.SmoothDamage))], 1, (int)KernelPart.Bran);
        var outlets = Enumerable.Range(0, ways.OutletCount).Select(o => new MillFlow(Parts(state.Out.AsSpan(o * width, width)), water[o], damaged[o], model.Wheat.Parts)).ToArray();
        var passages = ways.Passages.Select((passage, p) => Passage(passage, p, outlets, work[p].All)).ToDictionary(p => p.Passage.Code, StringComparer.Ordinal);
        var wheat = Wheat + WheatWater;
        return new MillSolution(
            report, [.. model.Sheet.Passages.Select(p => passages[p.Code])],
            [.. ways.Products.Select((product, k) => Sum(ways.IntoProduct[k], outlets)).Zip(ways.Products, (flow, product) => new SolvedProduct(product, flow, 100 * flow.TonnesPerHour / wheat))]);
    }

    private SolvedPassage Passage(Passage passage, int p, MillFlow[] outlets, double broken)
    {
        var into = Sum(ways.Into[p], outlets);
        if (p == ways.First)
        {
            into = new MillFlow([.. into.Parts.Select((mass, i) => mass + (Wheat * model.Wheat.Parts[i].Share))], into.WaterTonnesPerHour + WheatWater, into.DamagedTonnesPerHour, model.Wheat.Parts);
        }

        var own = outlets[ways.FirstOutlet[p]..ways.FirstOutlet[p + 1]];
        double? release = passage.ScalpOutlet is not { } scalp || into.DryTonnesPerHour <= 0 ? null : 100 * (1 - (own[scalp].DryTonnesPerHour / into.DryTonnesPerHour));
        return new SolvedPassage(passage, into, own, release, broken * (Fluted(p) ? model.Parameters.FlutedWork : model.Parameters.SmoothWork) / 3.6);
    }

    private bool Fluted(int p) => ways.Passages[p].Rolls is { IsFluted: true };

    // What the rolls of a passage break in all their steps, t/h: taken from the first step's share of what enters.
    private (double All, double Endosperm) Broken(int p)
    {
        var (all, endosperm) = (0.0, 0.0);
        if (ways.Passages[p].Rolls is null)
        {
            return (0, 0);
        }

        for (var k = 0; k < width; k++)
        {
            var amount = state.In[(p * width) + k] * state.Broken[(p * width) + k];
            all += amount;
            endosperm += k < (int)KernelPart.Bran * model.Classes.Count ? amount : 0;
        }

        // Every kernel is broken at first break.
        return p == ways.First ? (all + Wheat, endosperm + (Wheat * model.Wheat.Parts.Take((int)KernelPart.Bran).Sum(a => a.Share))) : (all, endosperm);
    }

    private MillFlow Sum(int[] into, MillFlow[] outlets)
    {
        double Over(Func<MillFlow, double> of) => into.Sum(w => knobs.Shares[w] * of(outlets[ways.Ways[w].Outlet]));
        return new MillFlow([.. Enumerable.Range(0, MillWheat.PartCount).Select(i => Over(f => f.Parts[i]))], Over(f => f.WaterTonnesPerHour), Over(f => f.DamagedTonnesPerHour), model.Wheat.Parts);
    }

    private double[] Parts(ReadOnlySpan<double> stock)
    {
        var parts = new double[MillWheat.PartCount];
        for (var k = 0; k < stock.Length; k++)
        {
            parts[k / model.Classes.Count] += stock[k];
        }

        return parts;
    }
}
