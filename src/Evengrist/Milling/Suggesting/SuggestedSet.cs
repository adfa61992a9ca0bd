using Evengrist.Milling.OnPaper;
using MathNet.Numerics.Distributions;

namespace Evengrist.Milling.Suggesting;

/// <summary>A move of a set, with what the wished figure loses where it alone is left out.</summary>
/// <param name="Move">The move.</param>
/// <param name="Share">Part of the wished figure's change that hangs on it, in the figure's unit; above 0 where it helps.</param>
public sealed record RankedMove(Move Move, double Share);

/// <summary>A bound or wish as a set of moves, solved anew exactly, meets it.</summary>
/// <param name="Row">The figure and its bounds.</param>
/// <param name="Value">As it would be.</param>
/// <param name="Change">Change against now.</param>
/// <param name="Uncertainty">One standard uncertainty of the change; null where nothing is known of it, as of damaged starch.</param>
/// <param name="Chance">Chance that the bounds hold, of a wish for as much as possible that it moves the right way, by the model's ±; null where that is not known.</param>
/// <param name="Holds">Whether the bounds hold in the mean.</param>
public sealed record BoundMet(SuggestRow Row, double Value, double Change, double? Uncertainty, double? Chance, bool Holds)
{
    /// <summary>How far beyond a bound still counts as on it, as a share of the figure: rounding, no more.</summary>
    internal const double Rounding = 1e-7;
}

/// <summary>A set of moves, solved anew exactly.</summary>
/// <param name="Moves">The moves, what helps most first.</param>
/// <param name="Change">All that would change, each ±.</param>
/// <param name="Wish">What becomes of the wish.</param>
/// <param name="Keeps">What becomes of each figure to be kept.</param>
/// <param name="Fullest">The passage whose load comes nearest to what it may rise to.</param>
public sealed record SuggestedSet(IReadOnlyList<RankedMove> Moves, MillChange Change, BoundMet Wish, IReadOnlyList<BoundMet> Keeps, BoundMet Fullest)
{
    /// <summary>Whether wish and bounds all hold in the mean.</summary>
    public bool Holds => Wish.Holds && Keeps.All(k => k.Holds) && Fullest.Holds;

    /// <summary>Whether wish and bounds hold and, where a chance was asked for, those of a change have it. A bound on a figure itself, and what no chance is known of, holds in the mean.</summary>
    /// <param name="sure">The chance asked for; null for none.</param>
    public bool IsSure(double? sure) => Holds && (sure is null || Keeps.Append(Wish).All(b => !b.Row.IsOfChange || b.Chance is null || b.Chance >= sure - 1e-3));

    /// <summary>A set solved anew with all that is known of the mill.</summary>
    /// <param name="mill">The mill of the question.</param>
    /// <param name="moves">The moves; at least one, the mill settles at them.</param>
    public static SuggestedSet Of(SuggestMill mill, IReadOnlyList<Move> moves)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(moves);
        var (spec, rows) = (mill.Spec, mill.Rows);
        var values = mill.At(moves) ?? throw new ArgumentException("The mill does not settle at these moves.", nameof(moves));
        var change = MillChange.Of(
            spec.Sheet, Move.Change(moves).Apply(spec.Sheet), spec.Wheat, spec.Wheat with { DryTonnesPerHour = spec.Wheat.DryTonnesPerHour * Move.FlowFactor(moves) }, spec.Tuning,
            [.. rows.Select(r => r.Figure.Kind is WishKind.Load or WishKind.MoneyPerDay ? new ProductSet("", []) : r.Figure.On(spec.Sheet)).Where(s => s.Products.Count > 0)], spec.PricePerTonne);
        BoundMet[] met = [.. rows.Select((r, i) => Met(r, values[i], ChangeOf(spec, change, r), spec, i == 0))];
        var keeps = met[1..(1 + spec.Keep.Count)];
        return new SuggestedSet(
            [.. moves.Select(m => new RankedMove(m, Share(mill, moves, m, values[0]))).OrderByDescending(m => m.Share)], change, met[0], keeps,
            met[(1 + spec.Keep.Count)..].MaxBy(m => m.Row.Now > 0 ? m.Value / m.Row.Now : 0)!);
    }

    private static double Share(SuggestMill mill, IReadOnlyList<Move> moves, Move move, double with)
        => mill.Spec.Wish.Sign * (with - (mill.At([.. moves.Where(m => m != move)]) is { } without ? without[0] : double.NaN));

    // What is uncertain of the change where the bounds are of it; of the figure itself where they are not.
    private static (double? OfChange, double? OfSelf) ChangeOf(SuggestSpec spec, MillChange change, SuggestRow row)
    {
        var figure = row.Figure;
        if (figure.Kind is WishKind.Load)
        {
            var i = change.Passages.ToList().FindIndex(p => p.Code == figure.Of[0]);
            return (change.Passages[i].DryTonnesPerHour.Uncertainty, change.Then.Passages[i].DryTonnesPerHour.Uncertainty);
        }

        if (figure.Kind is WishKind.MoneyPerDay)
        {
            return (change.MoneyPerDay!.Uncertainty, null);
        }

        Func<SetForecast, Estimate>? of = figure.Kind switch { WishKind.Yield => s => s.YieldPercent, WishKind.Ash => s => s.AshPercentDry, WishKind.Protein => s => s.ProteinPercentDry, _ => null };
        return of is null ? (null, null) : (of(Set(change.Products)).Uncertainty, of(Set(change.Then.Products)).Uncertainty);

        SetForecast Set(IReadOnlyList<SetForecast> all) => all.Skip(spec.Sheet.Products.Count).First(s => s.Name == figure.Words);
    }

    private static BoundMet Met(SuggestRow row, double value, (double? OfChange, double? OfSelf) unsure, SuggestSpec spec, bool wish)
    {
        var open = wish && spec.Wish.By is null;
        var (least, most) = open ? spec.Wish.Raise ? (row.Now, double.PositiveInfinity) : (double.NegativeInfinity, row.Now) : (row.Least, row.Most);
        var give = BoundMet.Rounding * Math.Max(1e-3, Math.Abs(row.Now));
        var u = row.IsOfChange ? unsure.OfChange : unsure.OfSelf;
        return new BoundMet(row, value, value - row.Now, unsure.OfChange, u is null ? null : Between(value, u.Value, least, most), value >= least - give && value <= most + give);
    }

    private static double Between(double value, double u, double least, double most) => u > 0
        ? Math.Max(0, (double.IsPositiveInfinity(most) ? 1 : Normal.CDF(value, u, most)) - (double.IsNegativeInfinity(least) ? 0 : Normal.CDF(value, u, least)))
        : value >= least && value <= most ? 1 : 0;
}
