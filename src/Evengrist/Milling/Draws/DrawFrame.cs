using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;

namespace Evengrist.Milling.Draws;

/// <summary>All that draws of a mill share, made once and only read after; rooms to draw in are made of it, one for each core.</summary>
public sealed class DrawFrame
{
    /// <summary>Makes draws ready.</summary>
    /// <param name="spec">What is asked.</param>
    /// <exception cref="ArgumentException">A sheet or wheat has faults, or the tuning is of another flow sheet.</exception>
    public DrawFrame(DrawsSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var tries = spec.Try is not null || spec.OtherWheat is not null;
        Spec = spec;
        Root = new CovarianceRoot(spec.Tuning.Covariance);
        Now = new DrawnMill(spec.Sheet, spec.Wheat, spec.Tuning, spec.Sets);
        Then = tries ? new DrawnMill(spec.Try?.Apply(spec.Sheet) ?? spec.Sheet, spec.OtherWheat ?? spec.Wheat, spec.Tuning, spec.Sets) : null;
        Shortfalls = [.. Now.Figures.Select(f => f is null ? 0 : spec.Tuning.ScatterOf(f.Kind) * f.ModelError)];
        ChangeShortfalls = Then is null ? [] : [.. Now.Figures.Zip(Then.Figures, (one, other) => one is null || other is null ? 0 : Changed(one.Kind, other.Value - one.Value))];
        var width = Now.Figures.Count;
        Worth = Then is null || spec.PricePerTonne is not { } prices ? [] :
            [.. spec.Sheet.Products.Select((p, i) => (3 * i, -Price(p.Code) * MillChange.PerPoint(spec.Wheat), Price(p.Code) * MillChange.PerPoint(spec.OtherWheat ?? spec.Wheat)))];
        MoneyShortfall = Worth.Count == 0 ? 0 : Changed(FigureKind.Flow, Worth.Sum(w => (w.Now * Now.Figures[w.At]!.Value) + (w.Then * Then!.Figures[w.At]!.Value)));
        Columns = Then is null ? width : (2 * width) + 1;

        double Price(string code) => (double)spec.PricePerTonne!.GetValueOrDefault(code);
    }

    /// <summary>What is asked.</summary>
    public DrawsSpec Spec { get; }

    /// <summary>How many figures each draw has.</summary>
    public int Columns { get; }

    /// <summary>Why the mill itself cannot be solved, each a sentence; empty where it can.</summary>
    public IReadOnlyList<string> Unsolved => [.. new[] { Now.Report.Unsolved, Then?.Report.Unsolved }.OfType<string>()];

    internal CovarianceRoot Root { get; }

    internal DrawnMill Now { get; }

    internal DrawnMill? Then { get; }

    internal double[] Shortfalls { get; }

    internal double[] ChangeShortfalls { get; }

    /// <summary>What a point of yield of each product brings in 24 h, taken away as it is and added as it would be.</summary>
    internal IReadOnlyList<(int At, double Now, double Then)> Worth { get; }

    internal double MoneyShortfall { get; }

    /// <summary>Room to draw in; for one core at a time.</summary>
    public DrawRoom Room() => new(this);

    /// <summary>Puts the figures of the draws together.</summary>
    /// <param name="figures">By column, the figure of all draws.</param>
    /// <param name="draws">Mills that count.</param>
    /// <param name="unsolved">Mills that could not be solved.</param>
    public MillDraws Of(IReadOnlyList<DrawnFigure?> figures, int draws, int unsolved)
    {
        ArgumentNullException.ThrowIfNull(figures);
        var width = Now.Figures.Count;
        return new MillDraws(Spec, draws, unsolved, Setting(figures, 0), Then is null ? null : Setting(figures, width), Worth.Count == 0 ? null : figures[2 * width]);
    }

    private double Changed(FigureKind kind, double change) => Spec.Tuning.ScatterOf(kind) * MillChange.Shortfall * Math.Abs(change);

    private DrawnSetting Setting(IReadOnlyList<DrawnFigure?> figures, int from)
    {
        var passages = from + (3 * Now.Names.Count);
        return new DrawnSetting(
            [.. Now.Names.Select((name, i) => new DrawnSet(name, figures[from + (3 * i)], figures[from + (3 * i) + 1], figures[from + (3 * i) + 2]))],
            [.. Spec.Sheet.Passages.Select((p, i) => new DrawnPassage(p.Code, figures[passages + (2 * i)], figures[passages + (2 * i) + 1]))]);
    }
}
