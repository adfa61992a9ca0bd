using MathNet.Numerics.Distributions;

namespace Evengrist.Intake.Sampling;

/// <summary>Loads as the prior has them, each with its weight, its true value and the error of its test.</summary>
internal sealed class PosedLoads
{
    private const int NodesEach = 200;
    private const double Furthest = 7;
    private const int Levels = 160;
    private const int Refinements = 60;
    private readonly List<(double Weight, double True, double Error, bool Bad)> nodes = [];
    private readonly bool badIsLow;

    private PosedLoads(TestSpec spec)
    {
        badIsLow = spec.Prior.Scale == PriorScale.Liquefaction;
        var cut = Math.Clamp(spec.Prior.ScoreOf(spec.Limit), -Furthest, Furthest);

        // A high score is a high liquefaction number (a low falling number) or a high toxin: bad either way.
        Add(spec, -Furthest, cut, bad: false);
        Add(spec, cut, Furthest, bad: true);
        ChanceBad = nodes.Where(n => n.Bad).Sum(n => n.Weight);
    }

    public double ChanceBad { get; }

    public static PosedLoads Of(TestSpec spec) => new(spec);

    /// <summary>The level with the least loss, and the loss; no level where none beats the decision without a test.</summary>
    public (double? Level, double Loss) BestLevel(Func<(double AcceptedBad, double DivertedGood), double> loss, double untested)
    {
        var values = nodes.Where(n => n.Weight > 1e-9).ToArray();
        var (least, most) = (values.Min(n => n.True - 3 * n.Error), values.Max(n => n.True + 3 * n.Error));
        double At(int i) => least + (most - least) * i / Levels;
        var best = Enumerable.Range(0, Levels + 1).MinBy(i => loss(Shares(At(i))));
        var level = Refine(loss, At(Math.Max(0, best - 1)), At(Math.Min(Levels, best + 1)));
        var found = loss(Shares(level));
        return found < untested ? (level, found) : (null, untested);
    }

    private (double AcceptedBad, double DivertedGood) Shares(double level)
    {
        var (acceptedBad, divertedGood) = (0.0, 0.0);
        foreach (var (weight, truth, error, bad) in nodes)
        {
            var above = Normal.CDF(0, 1, (truth - level) / error);
            var accepted = badIsLow ? above : 1 - above;
            if (bad)
            {
                acceptedBad += weight * accepted;
            }
            else
            {
                divertedGood += weight * (1 - accepted);
            }
        }

        return (acceptedBad, divertedGood);
    }

    // Golden section between two levels.
    private double Refine(Func<(double AcceptedBad, double DivertedGood), double> loss, double from, double to)
    {
        const double Part = 0.6180339887498949;
        var (a, b) = (to - Part * (to - from), from + Part * (to - from));
        var (lossA, lossB) = (loss(Shares(a)), loss(Shares(b)));
        for (var i = 0; i < Refinements && to - from > 1e-7 * Math.Max(1, Math.Abs(to)); i++)
        {
            if (lossA <= lossB)
            {
                (to, b, lossB) = (b, a, lossA);
                a = to - Part * (to - from);
                lossA = loss(Shares(a));
            }
            else
            {
                (from, a, lossA) = (a, b, lossB);
                b = from + Part * (to - from);
                lossB = loss(Shares(b));
            }
        }

        return (from + to) / 2;
    }

    // Midpoints in the score, scaled so that each side keeps its exact chance.
    private void Add(TestSpec spec, double from, double to, bool bad)
    {
        var chance = Normal.CDF(0, 1, to) - Normal.CDF(0, 1, from);
        if (chance <= 0)
        {
            return;
        }

        var scores = Enumerable.Range(0, NodesEach).Select(i => from + (to - from) * (i + 0.5) / NodesEach).ToArray();
        var density = scores.Sum(s => Math.Exp(-s * s / 2));
        foreach (var score in scores)
        {
            var truth = spec.Prior.TrueAt(score);
            var error = badIsLow ? spec.RelativeError * truth : Math.Max(1e-9, DonVariance.Of(truth, spec.Sizes).StandardDeviation);
            nodes.Add((chance * Math.Exp(-score * score / 2) / density, truth, error, bad));
        }
    }
}
