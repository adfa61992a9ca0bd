using Evengrist.Numerics.Reconciling;

namespace Evengrist.Milling.Balance;

/// <summary>What comes of a balance.</summary>
public abstract record BalanceOutcome
{
    private protected BalanceOutcome()
    {
    }
}

/// <summary>The balance of a mill over a span.</summary>
/// <param name="Spec">What was weighed and read.</param>
public sealed record MillBalance(BalanceSpec Spec) : BalanceOutcome
{
    /// <summary>Least and most of what usually goes unexplained, per cent of wheat and water [memory].</summary>
    public const double LeastUnexplainedPercent = 0.5, MostUnexplainedPercent = 2.0;

    /// <summary>Least and most dry matter that usually comes out weighed of a hundred in [memory].</summary>
    public const double LeastClosurePercent = 98, MostClosurePercent = 101;

    /// <summary>Extractions from what was weighed, one for each basis.</summary>
    public required IReadOnlyList<Extraction> Extractions { get; init; }

    /// <summary>The same from the reconciled values; empty where nothing is checked or there are none.</summary>
    public required IReadOnlyList<Extraction> ReconciledExtractions { get; init; }

    /// <summary>What went in and did not come out weighed, with one standard uncertainty from the weighers, t.</summary>
    public required Weighed Unexplained { get; init; }

    /// <summary>Dry matter weighed out of a hundred in, with one standard uncertainty; null where a moisture was not read.</summary>
    public required MeanMoisture? DryClosure { get; init; }

    /// <summary>Electricity; null where it was not read or no flour was weighed.</summary>
    public required EnergyUse? Energy { get; init; }

    /// <summary>Whether the measurements go together, and which does not.</summary>
    public required GrossErrorOutcome Check { get; init; }

    /// <summary>The balance that <see cref="Losses"/> come from: without what was named alone as wrong; null where there is none.</summary>
    public required Balanced? Reconciled { get; init; }

    /// <summary>Where what is unexplained lies; they add up to it. Empty where nothing was reconciled.</summary>
    public required IReadOnlyList<LossPart> Losses { get; init; }

    /// <summary>What is unexplained, in per cent of wheat before cleaning and water.</summary>
    public double UnexplainedPercent => 100 * Unexplained.Tonnes / (Spec.Dirty.Tonnes + Spec.Water.Tonnes);

    /// <summary>Whether that lies in the usual band.</summary>
    public bool IsUsual => UnexplainedPercent is >= LeastUnexplainedPercent and <= MostUnexplainedPercent;

    /// <summary>Flour, t.</summary>
    public double FlourTonnes => Spec.Products.Where(p => p.Kind == WeighedKind.Flour).Sum(p => p.Mass.Tonnes);

    /// <summary>What must be said with it, each a sentence.</summary>
    public required IReadOnlyList<string> Remarks { get; init; }
}

/// <summary>No balance can be made.</summary>
/// <param name="Reasons">Why, each a sentence that says what to do.</param>
public sealed record NoMillBalance(IReadOnlyList<string> Reasons) : BalanceOutcome;
