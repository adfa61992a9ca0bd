using Evengrist.Numerics.Reconciling;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Balance;

/// <summary>The balance of a mill over a day or a month: mass, dry matter and water, extractions, and where the unexplained lies. Model: docs/model/balance.md.</summary>
public static class BalanceModel
{
    /// <summary>Chance of a false alarm of each test.</summary>
    public const double Level = 0.05;

    /// <summary>Makes the balance, or says why there is none.</summary>
    public static BalanceOutcome Of(BalanceSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new NoMillBalance(faults);
        }

        var question = BalanceQuestion.Of(spec);
        if (question.Faults() is { Count: > 0 } wrong)
        {
            return new NoMillBalance(wrong);
        }

        var check = GrossErrorModel.Of(question, Level, (name, value) => value >= 0 || name == BalanceQuestion.RiseName);
        var reconciled = LossModel.Of(check);
        var (masses, spread) = (Masses(question), Matrix<double>.Build.DenseOfDiagonalArray([.. question.Unknowns.Select(u => Math.Pow(u.StandardUncertainty ?? 0, 2))]));
        var unexplained = Spread.Of(v => FirstBreak(v) - Products(spec, v), masses, spread);
        var flour = spec.Products.Where(p => p.Kind == WeighedKind.Flour).Sum(p => p.Mass.Tonnes);
        return new MillBalance(spec)
        {
            Extractions = Of(spec, masses, spread), ReconciledExtractions = reconciled is { Freedom: > 0 } ? Of(spec, [.. reconciled.Values.Select(v => v.Value)], reconciled.Covariance) : [],
            Unexplained = new Weighed(unexplained.Value, unexplained.StandardUncertainty), DryClosure = Closure(spec, masses, spread),
            Energy = spec.KilowattHours is { } energy && flour > 0 ? new EnergyUse(energy / spec.Dirty.Tonnes, energy / flour) : null,
            Check = check, Reconciled = reconciled, Losses = reconciled is null ? [] : LossModel.Parts(spec, reconciled), Remarks = [.. BalanceRemarks.Of(spec, check)],
        };
    }

    private static double[] Masses(ReconcileSpec question) => [.. question.Unknowns.Select(u => u.Value)];

    private static Extraction[] Of(BalanceSpec spec, double[] values, Matrix<double> spread) =>
    [
        .. Extraction.Bases.Select(basis =>
        {
            var (percent, u) = Spread.Of(v => 100 * Flour(spec, v) / OfBasis(spec, basis, v), values, spread);
            return new Extraction(basis, percent, u);
        }),
    ];

    private static MeanMoisture? Closure(BalanceSpec spec, double[] values, Matrix<double> spread)
    {
        if (spec.WheatMoisture is null || spec.Products.Any(p => p.Mass.Tonnes > 0 && p.Moisture is null))
        {
            return null;
        }

        // What the temper bins rose by is of the wheat as it runs in: clean wheat with its water.
        double Dry(double[] v) => (Clean(v) * (1 - v[BalanceQuestion.WheatMoisture])) * (FirstBreak(v) / (Clean(v) + v[BalanceQuestion.Water]));
        var (percent, u) = Spread.Of(v => 100 * Each(spec).Sum(p => v[BalanceQuestion.Mass(p)] * (1 - v[BalanceQuestion.Moisture(p)])) / Dry(v), values, spread);
        return new MeanMoisture(percent, u);
    }

    private static IEnumerable<int> Each(BalanceSpec spec) => Enumerable.Range(0, spec.Products.Count);

    private static double Flour(BalanceSpec spec, double[] v) => Each(spec).Where(p => spec.Products[p].Kind == WeighedKind.Flour).Sum(p => v[BalanceQuestion.Mass(p)]);

    private static double Products(BalanceSpec spec, double[] v) => Each(spec).Sum(p => v[BalanceQuestion.Mass(p)]);

    private static double Clean(double[] v) => v[BalanceQuestion.Wheat] - v[BalanceQuestion.Screenings];

    // By balance, not by the scale before first break, which not every mill has.
    private static double FirstBreak(double[] v) => Clean(v) + v[BalanceQuestion.Water] - v[BalanceQuestion.Rise];

    private static double OfBasis(BalanceSpec spec, ExtractionBasis basis, double[] v) => basis switch
    {
        ExtractionBasis.DirtyWheat => v[BalanceQuestion.Wheat],
        ExtractionBasis.CleanWheat => Clean(v),
        ExtractionBasis.FirstBreak => FirstBreak(v),
        _ => Products(spec, v),
    };
}
