namespace Evengrist.Milling.Solving;

/// <summary>A quantity that goes with the stock of a passage in proportion to some of its parts: water with all dry matter, damaged starch with endosperm.</summary>
internal static class MillScalar
{
    private const int MostSweeps = 2000;
    private const double Enough = 1e-12;

    /// <summary>The quantity in each outlet.</summary>
    /// <param name="model">The mill.</param>
    /// <param name="knobs">Its settings.</param>
    /// <param name="state">The stock as solved.</param>
    /// <param name="added">What each passage adds.</param>
    /// <param name="kept">Share of what enters a passage that goes on.</param>
    /// <param name="parts">How many of the parts carry it, from the first.</param>
    public static double[] Of(MillModel model, MillKnobs knobs, MillState state, double[] added, double kept, int parts)
    {
        var ways = model.Ways;
        var carriers = Enumerable.Range(0, ways.OutletCount).Select(o => Carrier(model, state.Out.AsSpan(o * model.Width, model.Width), parts)).ToArray();
        var amounts = new double[ways.OutletCount];
        for (var sweep = 0; sweep < MostSweeps; sweep++)
        {
            var (moved, all) = (0.0, 0.0);
            for (var p = 0; p < ways.Passages.Length; p++)
            {
                var amount = added[p] + (kept * ways.Into[p].Sum(w => knobs.Shares[w] * amounts[ways.Ways[w].Outlet]));
                var (from, to) = (ways.FirstOutlet[p], ways.FirstOutlet[p + 1]);
                var carrier = carriers.AsSpan(from, to - from);
                var whole = 0.0;
                foreach (var c in carrier)
                {
                    whole += c;
                }

                for (var o = from; o < to; o++)
                {
                    var now = whole > 0 ? amount * carriers[o] / whole : 0;
                    moved += Math.Abs(now - amounts[o]);
                    all += now;
                    amounts[o] = now;
                }
            }

            if (moved <= Enough * all)
            {
                break;
            }
        }

        return amounts;
    }

    private static double Carrier(MillModel model, ReadOnlySpan<double> stock, int parts)
    {
        var sum = 0.0;
        foreach (var amount in stock[..(parts * model.Classes.Count)])
        {
            sum += amount;
        }

        return sum;
    }
}
