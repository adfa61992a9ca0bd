using Evengrist.Ledger;
using MathNet.Numerics.Distributions;

namespace Evengrist.Season.ChangeOver;

/// <summary>Lays out the change from old crop to new: what each step does to every flour's wheat mix, and how sure that is.</summary>
/// <remarks>
/// On the scale on which a property averages the mix is ((1 − s)·w_o·v_o + s·w_n·v_n)/((1 − s)·w_o + s·w_n); what old and new may be off by is independent, so the
/// variances add by the squares of the shares. An error of the instrument that old and new have in common moves both alike and is in neither. Model: docs/model/change-over.md.
/// </remarks>
public static class ChangeOverModel
{
    /// <summary>Lays it out.</summary>
    public static ChangeOverOutcome Lay(ChangeOverSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        return ChangeOverFaults.Of(spec) is { Count: > 0 } faults ? new ChangeOverRefused(faults) : new ChangeOverLaid([.. spec.Flours.Select(f => Flour(spec, f))]);
    }

    private static FlourChangeOver Flour(ChangeOverSpec spec, ChangingFlour flour)
    {
        var known = flour.Old.Quality.Values.Keys.Where(p => SeasonScale.Averages(p) && flour.New.Quality.TryGet(p, out _)).Order().ToArray();
        var steps = new List<ChangeStep>();
        var before = 0.0;
        foreach (var share in spec.Steps)
        {
            steps.Add(new ChangeStep(share, steps.Count * spec.DaysPerStep, [.. known.Select(p => Move(flour, p, before, share))]));
            before = share;
        }

        return new FlourChangeOver(flour.Code, steps, spec.LargestMoves.Where(m => known.Contains(m.What)).Select(m => LargestStep(flour, m)).DefaultIfEmpty(1).Min());
    }

    private static PropertyMove Move(ChangingFlour flour, Property what, double before, double share)
    {
        var (value, spread) = At(flour, what, share);
        var from = At(flour, what, before).Value;
        var (o, n) = (flour.Old.Quality.Values[what], flour.New.Quality.Values[what]);

        // The same lots stand on both sides of a step, so only the share that changes hands is unsure: to first order, by the slope at the step.
        var (slope, _) = Slopes(flour, what, share);
        var (slopeBefore, _) = Slopes(flour, what, before);
        var moveSpread = Math.Sqrt(Square((slope.Old - slopeBefore.Old) * o.Spread) + Square((slope.New - slopeBefore.New) * n.Spread));
        return new PropertyMove(what, value, spread, value - from, moveSpread, Kept(flour, what, value, spread));
    }

    private static (double Value, double Spread) At(ChangingFlour flour, Property what, double share)
    {
        var (slopes, value) = Slopes(flour, what, share);
        return (value, Math.Sqrt(Square(slopes.Old * flour.Old.Quality.Values[what].Spread) + Square(slopes.New * flour.New.Quality.Values[what].Spread)));
    }

    // The value of the mix on the old mix's basis, and by how much it moves as the old or the new mix's own value does.
    private static ((double Old, double New) Slopes, double Value) Slopes(ChangingFlour flour, Property what, double share)
    {
        var (o, n) = (flour.Old.Quality.Values[what], flour.New.Quality.Values[what]);
        var (weightOld, weightNew) = ((1 - share) * SeasonScale.Weight(what, flour.Old.MoisturePercent), share * SeasonScale.Weight(what, flour.New.MoisturePercent));
        double Mix(double old, double @new) => SeasonScale.FromScale(
            what, ((weightOld * SeasonScale.OnScale(what, old, o.Basis)) + (weightNew * SeasonScale.OnScale(what, @new, n.Basis))) / (weightOld + weightNew), o.Basis);
        const double step = 1e-4;
        return (((Mix(o.Value + step, n.Value) - Mix(o.Value - step, n.Value)) / (2 * step), (Mix(o.Value, n.Value + step) - Mix(o.Value, n.Value - step)) / (2 * step)), Mix(o.Value, n.Value));
    }

    private static double? Kept(ChangingFlour flour, Property what, double value, double spread)
    {
        if (flour.Limits.FirstOrDefault(l => l.What == what) is not { } limit)
        {
            return null;
        }

        var basis = flour.Old.Quality.Values[what].Basis;
        double On(double edge) => what.NeedsBasis() ? SeasonScale.FromScale(what, SeasonScale.OnScale(what, edge, limit.Basis), basis) : edge;
        double Below(double edge) => spread > 0 ? Normal.CDF(0, 1, (edge - value) / spread) : value <= edge ? 1 : 0;
        var (least, most) = (limit.Least is { } l ? On(l) : double.NegativeInfinity, limit.Most is { } m ? On(m) : double.PositiveInfinity);
        return spread > 0 ? Math.Max(0, Below(most) - Below(least)) : value >= least && value <= most ? 1 : 0;
    }

    private static double LargestStep(ChangingFlour flour, LargestMove move)
    {
        bool Fits(double step) => ChangeOverSpec.Even(step).Aggregate((Before: 0.0, Holds: true), (x, share) =>
            (share, x.Holds && Math.Abs(Move(flour, move.What, x.Before, share).Move) + (2 * Move(flour, move.What, x.Before, share).MoveSpread) <= move.By)).Holds;
        for (var percent = 100; percent >= 1; percent--)
        {
            if (Fits(percent / 100.0))
            {
                return percent / 100.0;
            }
        }

        return 0;
    }

    private static double Square(double x) => x * x;
}
