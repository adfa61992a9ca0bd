using Evengrist.Milling.Learning;
using Evengrist.Milling.Solving;

namespace Evengrist.Milling.Suggesting;

/// <summary>The mill of a question, solved exactly at any set of moves; each time from the stock of the time before. Not for several threads at once.</summary>
public sealed class SuggestMill
{
    private readonly MillRun run;
    private readonly MillKnobs set;
    private readonly Dictionary<string, int> passages;

    /// <summary>Makes the mill ready and solves it as it is.</summary>
    /// <param name="spec">A question without faults.</param>
    public SuggestMill(SuggestSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        Spec = spec;
        run = TunedMill.Of(spec.Sheet, spec.Wheat, spec.Tuning.Keys, spec.Tuning.Values);
        set = run.Knobs;
        passages = run.Model.Ways.Passages.Index().ToDictionary(p => p.Item.Code, p => p.Index, StringComparer.Ordinal);
        Choice = MoveChoice.Of(spec);
        var now = run.Read();
        Rows = [Wished(now), .. spec.Keep.Select(k => Kept(k, Value(now, k.Figure, 1))), .. spec.Sheet.Passages.Select(p => Choke(now, p.Code))];
        Unsolved = now.Report.Unsolved ?? Rows.FirstOrDefault(r => !double.IsFinite(r.Now)) switch
        {
            { } none => $"Nothing flows of which {none.Figure.Words} could be reckoned: ask it of products that are made.",
            null => null,
        };
    }

    /// <summary>The question.</summary>
    public SuggestSpec Spec { get; }

    /// <summary>Why nothing can be suggested to the mill as it is; null where it can.</summary>
    public string? Unsolved { get; }

    /// <summary>Every single move that is allowed.</summary>
    public IReadOnlyList<Move> Choice { get; }

    /// <summary>The wished figure first, then those to be kept, then the load of every passage.</summary>
    public IReadOnlyList<SuggestRow> Rows { get; }

    /// <summary>Value of every row at a set of moves; null where the mill does not settle there.</summary>
    public double[]? At(IReadOnlyList<Move> moves)
    {
        ArgumentNullException.ThrowIfNull(moves);
        run.Knobs = set.Copy();
        foreach (var move in moves)
        {
            Turn(run.Knobs, move);
        }

        var solved = run.Read();
        return solved.Report.Unsolved is null ? [.. Rows.Select(r => Value(solved, r.Figure, Move.FlowFactor(moves)))] : null;
    }

    private void Turn(MillKnobs knobs, Move move)
    {
        var passage = passages[move.Passage];
        switch (move.Kind)
        {
            case MoveKind.Gap: knobs.Nip[passage] /= move.Factor; break;
            case MoveKind.Air: knobs.Air[passage] *= move.Factor; break;
            case MoveKind.Cloth: knobs.Cut[run.Model.Ways.FirstOutlet[passage] + move.Outlet] *= move.Factor; break;
            case MoveKind.Flow: knobs.Feed *= move.Factor; break;
            default: throw new ArgumentOutOfRangeException(nameof(move), move, "is no move");
        }
    }

    private double Value(MillSolution solved, WishFigure figure, double flow)
    {
        if (figure.Kind is WishKind.Load)
        {
            return solved.Passage(figure.Of[0]).In.DryTonnesPerHour;
        }

        if (figure.Kind is WishKind.MoneyPerDay)
        {
            var wheat = flow * Spec.Wheat.DryTonnesPerHour / (1 - (Spec.Wheat.MoisturePercent / 100));
            return solved.Products.Sum(p => 24 * wheat * p.YieldPercent / 100 * (double)Spec.PricePerTonne!.GetValueOrDefault(p.Product.Code));
        }

        SolvedProduct[] of = [.. figure.On(Spec.Sheet).Products.Select(solved.Product)];
        return figure.Kind is WishKind.Yield ? of.Sum(p => p.YieldPercent) : of.Sum(p => p.Flow.DryTonnesPerHour * Content(p.Flow)) / of.Sum(p => p.Flow.DryTonnesPerHour);

        double Content(MillFlow stock) => stock.DryTonnesPerHour <= 0 ? 0 : figure.Kind switch { WishKind.Ash => stock.AshPercentDry, WishKind.Protein => stock.ProteinPercentDry, _ => stock.DamagedPercentDry };
    }

    private SuggestRow Wished(MillSolution now)
    {
        var (wish, value) = (Spec.Wish, Value(now, Spec.Wish.Figure, 1));
        return new SuggestRow(wish.Figure, value, wish is { Raise: true, By: { } up } ? value + up : double.NegativeInfinity, wish is { Raise: false, By: { } down } ? value - down : double.PositiveInfinity, true);
    }

    private static SuggestRow Kept(KeptFigure kept, double now) => kept.IsOfChange
        ? new SuggestRow(kept.Figure, now, now + (kept.LeastChange ?? double.NegativeInfinity), now + (kept.MostChange ?? double.PositiveInfinity), true)
        : new SuggestRow(kept.Figure, now, kept.Least ?? double.NegativeInfinity, kept.Most ?? double.PositiveInfinity, false);

    private SuggestRow Choke(MillSolution now, string passage)
    {
        var load = now.Passage(passage).In.DryTonnesPerHour;
        return new SuggestRow(new WishFigure(WishKind.Load, [passage]), load, double.NegativeInfinity, load * (1 + (Spec.Rules.MostLoadRisePercent / 100)), true) { IsChoke = true };
    }
}
