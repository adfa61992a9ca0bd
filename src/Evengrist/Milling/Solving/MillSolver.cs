namespace Evengrist.Milling.Solving;

/// <summary>Solves a mill with its loops: block after block in the order of the flow; in a block sweep after sweep, hastened by the dominant eigenvalue.</summary>
/// <remarks>Gauss-Seidel on the torn outlets of a block. The torn stock is carried on as <see cref="Hastening"/> says, never below 0.</remarks>
internal static class MillSolver
{
    /// <summary>What may still move, as a share of the wheat.</summary>
    public const double Enough = 1e-10;

    /// <summary>What the products of a part may differ from its feed, as a share of the wheat.</summary>
    public const double Closes = 1e-9;

    /// <summary>Sweeps after which a loop is taken to swing, as overloaded cloths can make it, and each sweep goes half its way only.</summary>
    private const int Patience = 250;

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
        for (var b = 0; b < ways.Blocks.Length; b++)
        {
            var (exit, sweeps, moved) = Settle(model, knobs, state, broken, start, ways.Blocks[b].Length, ways.Torn[b]);
            if (exit is not MillExit.Converged)
            {
                return new MillReport(exit, sweeps, moved, double.NaN, ways.Blocks[b][0].Code);
            }

            (start, most, change) = (start + ways.Blocks[b].Length, Math.Max(most, sweeps), Math.Max(change, moved));
        }

        var closure = Closure(model, knobs, state, broken);
        return new MillReport(closure <= Closes ? MillExit.Converged : MillExit.DoesNotClose, most, change, closure, null);
    }

    private static (MillExit Exit, int Sweeps, double Moved) Settle(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken, int start, int length, int[] torn)
    {
        if (torn.Length == 0)
        {
            Visit(model, knobs, state, broken, start);
            return (MillExit.Converged, 1, 0);
        }

        var feed = model.Wheat.DryTonnesPerHour * knobs.Feed;
        var (hastening, last) = (new Hastening(), double.NaN);
        for (var sweep = 1; sweep <= MostSweeps; sweep++)
        {
            foreach (var outlet in torn)
            {
                state.Out.AsSpan(outlet * model.Width, model.Width).CopyTo(state.Torn.AsSpan(outlet * model.Width, model.Width));
            }

            for (var p = start; p < start + length; p++)
            {
                Visit(model, knobs, state, broken, p);
            }

            var moved = Moved(model, state, torn) / feed;
            if (!(state.Load[start] < 1e6 * feed))
            {
                return (MillExit.StockPilesUp, sweep, moved);
            }

            if (moved <= Enough)
            {
                return (MillExit.Converged, sweep, moved);
            }

            last = moved;
            if (sweep > Patience)
            {
                Carry(model, state, torn, -0.5);
            }
            else if (hastening.Beyond(moved) is var factor and > 0)
            {
                Carry(model, state, torn, factor);
            }
        }

        return (MillExit.SweepsSpent, MostSweeps, last);
    }

    private static void Visit(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken, int passage)
    {
        var (ways, width) = (model.Ways, model.Width);
        var into = state.In.AsSpan(passage * width, width);
        into.Clear();
        foreach (var way in ways.Into[passage])
        {
            Lanes.Add(into, state.Out.AsSpan(ways.Ways[way].Outlet * width, width), knobs.Shares[way]);
        }

        var first = passage == ways.First;
        var load = Lanes.Sum(into) + (first ? model.Wheat.DryTonnesPerHour * knobs.Feed : 0);
        state.Load[passage] = load;
        PassageStep.Run(model, passage, load, knobs, state, first ? broken : []);
    }

    private static double Moved(MillModel model, MillState state, int[] torn)
    {
        var moved = 0.0;
        foreach (var outlet in torn)
        {
            for (var k = outlet * model.Width; k < (outlet + 1) * model.Width; k++)
            {
                moved += Math.Abs(state.Out[k] - state.Torn[k]);
            }
        }

        return moved;
    }

    private static void Carry(MillModel model, MillState state, int[] torn, double factor)
    {
        foreach (var outlet in torn)
        {
            for (var k = outlet * model.Width; k < (outlet + 1) * model.Width; k++)
            {
                state.Out[k] = Math.Max(0, state.Out[k] + (factor * (state.Out[k] - state.Torn[k])));
            }
        }
    }

    private static double Closure(MillModel model, MillKnobs knobs, MillState state, ReadOnlySpan<double> broken)
    {
        var (n, worst) = (model.Classes.Count, 0.0);
        for (var part = 0; part < Stock.MillWheat.PartCount; part++)
        {
            var left = Lanes.Sum(broken.Slice(part * n, n)) * knobs.Feed;
            foreach (var ways in model.Ways.IntoProduct)
            {
                foreach (var way in ways)
                {
                    left -= knobs.Shares[way] * Lanes.Sum(state.Out.AsSpan((model.Ways.Ways[way].Outlet * model.Width) + (part * n), n));
                }
            }

            worst = Math.Max(worst, Math.Abs(left));
        }

        return worst / (model.Wheat.DryTonnesPerHour * knobs.Feed);
    }
}
