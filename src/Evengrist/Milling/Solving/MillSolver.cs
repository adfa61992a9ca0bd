namespace Evengrist.Milling.Solving;

/// <summary>Solves a mill with its loops: block after block in the order of the flow; in a block sweep after sweep, hastened by the dominant eigenvalue.</summary>
/// <remarks>Gauss-Seidel on the torn outlets of a block. Where the change of a sweep has become a steady share λ of the one before, the torn stock is carried on by λ/(1 − λ) of it, never below 0.</remarks>
public static class MillSolver
{
    /// <summary>What may still move, as a share of the wheat.</summary>
    public const double Enough = 1e-10;

    /// <summary>What the products of a part may differ from its feed, as a share of the wheat.</summary>
    public const double Closes = 1e-9;

    /// <summary>Most sweeps of one block.</summary>
    public const int MostSweeps = 5000;

    /// <summary>Solves from the stock a state holds, which it leaves at the answer.</summary>
    /// <param name="model">The mill.</param>
    /// <param name="knobs">Its settings.</param>
    /// <param name="state">Stock to start from: empty, or of an earlier answer.</param>
    /// <param name="broken">Wheat behind the rolls of first break.</param>
    internal static MillReport Solve(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken)
    {
        var (ways, start, most, change) = (model.Ways, 0, 1, 0.0);
        foreach (var block in ways.Blocks)
        {
            var (exit, sweeps, moved) = Settle(model, knobs, state, broken, start, block.Length);
            if (exit is not MillExit.Converged)
            {
                return new MillReport(exit, sweeps, moved, double.NaN, block[0].Code);
            }

            (start, most, change) = (start + block.Length, Math.Max(most, sweeps), Math.Max(change, moved));
        }

        var closure = Closure(model, knobs, state, broken);
        return new MillReport(closure <= Closes ? MillExit.Converged : MillExit.DoesNotClose, most, change, closure, null);
    }

    private static (MillExit Exit, int Sweeps, double Moved) Settle(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken, int start, int length)
    {
        if (length == 1 && !Loops(model, start))
        {
            Visit(model, knobs, state, broken, start);
            return (MillExit.Converged, 1, 0);
        }

        var feed = model.Wheat.DryTonnesPerHour * knobs.Feed;
        var (before, ratio) = (double.NaN, double.NaN);
        for (var sweep = 1; sweep <= MostSweeps; sweep++)
        {
            Keep(model, state, start, length);
            for (var p = start; p < start + length; p++)
            {
                Visit(model, knobs, state, broken, p);
            }

            var moved = Moved(model, state, start, length) / feed;
            if (!(state.Load[start] < 1e6 * feed))
            {
                return (MillExit.StockPilesUp, sweep, moved);
            }

            if (moved <= Enough)
            {
                return (MillExit.Converged, sweep, moved);
            }

            var now = moved / before;
            var steady = now is > 0.05 and < 0.9999 && Math.Abs(now - ratio) < 0.1 * (1 - now);
            if (steady)
            {
                Carry(model, state, start, length, now / (1 - now));
            }

            (before, ratio) = steady ? (double.NaN, double.NaN) : (moved, now);
        }

        return (MillExit.SweepsSpent, MostSweeps, before);
    }

    private static bool Loops(MillModel model, int passage) => Array.Exists(model.Ways.Into[passage], w => model.Ways.Ways[w].From == passage);

    private static void Visit(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken, int passage)
    {
        var (ways, width) = (model.Ways, model.Width);
        var into = state.In.AsSpan(passage * width, width);
        into.Clear();
        foreach (var way in ways.Into[passage])
        {
            var stock = state.Out.AsSpan(ways.Ways[way].Outlet * width, width);
            var share = knobs.Shares[way];
            for (var k = 0; k < width; k++)
            {
                into[k] += share * stock[k];
            }
        }

        var load = passage == ways.First ? model.Wheat.DryTonnesPerHour * knobs.Feed : 0;
        foreach (var amount in into)
        {
            load += amount;
        }

        state.Load[passage] = load;
        PassageStep.Run(model, passage, load, knobs, state, passage == ways.First ? broken : []);
    }

    // An outlet of a block is torn where it feeds a passage of the block that was visited no later.
    private static bool IsTorn(MillModel model, int outlet, int start, int length)
    {
        foreach (var way in model.Ways.OutOf[outlet])
        {
            var w = model.Ways.Ways[way];
            if (w.To >= start && w.To < start + length && w.To <= w.From)
            {
                return true;
            }
        }

        return false;
    }

    private static void Keep(MillModel model, MillState state, int start, int length)
    {
        for (var outlet = model.Ways.FirstOutlet[start]; outlet < model.Ways.FirstOutlet[start + length]; outlet++)
        {
            if (IsTorn(model, outlet, start, length))
            {
                state.Out.AsSpan(outlet * model.Width, model.Width).CopyTo(state.Torn.AsSpan(outlet * model.Width, model.Width));
            }
        }
    }

    private static double Moved(MillModel model, MillState state, int start, int length)
    {
        var moved = 0.0;
        for (var outlet = model.Ways.FirstOutlet[start]; outlet < model.Ways.FirstOutlet[start + length]; outlet++)
        {
            if (IsTorn(model, outlet, start, length))
            {
                var at = outlet * model.Width;
                for (var k = at; k < at + model.Width; k++)
                {
                    moved += Math.Abs(state.Out[k] - state.Torn[k]);
                }
            }
        }

        return moved;
    }

    private static void Carry(MillModel model, MillState state, int start, int length, double factor)
    {
        for (var outlet = model.Ways.FirstOutlet[start]; outlet < model.Ways.FirstOutlet[start + length]; outlet++)
        {
            if (IsTorn(model, outlet, start, length))
            {
                var at = outlet * model.Width;
                for (var k = at; k < at + model.Width; k++)
                {
                    state.Out[k] = Math.Max(0, state.Out[k] + (factor * (state.Out[k] - state.Torn[k])));
                }
            }
        }
    }

    private static double Closure(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken)
    {
        var (n, worst, feed) = (model.Classes.Count, 0.0, model.Wheat.DryTonnesPerHour * knobs.Feed);
        for (var part = 0; part < Stock.MillWheat.PartCount; part++)
        {
            var left = 0.0;
            for (var k = part * n; k < (part + 1) * n; k++)
            {
                left += broken[k] * knobs.Feed;
                foreach (var ways in model.Ways.IntoProduct)
                {
                    foreach (var way in ways)
                    {
                        left -= knobs.Shares[way] * state.Out[(model.Ways.Ways[way].Outlet * model.Width) + k];
                    }
                }
            }

            worst = Math.Max(worst, Math.Abs(left) / feed);
        }

        return worst;
    }
}
