namespace Evengrist.Milling.Suggesting;

/// <summary>What may be moved, in which steps and how far. The usual values are ours; the maker's least gap goes before them.</summary>
public sealed record MoveRules
{
    /// <summary>Most moves of one set; 1 to 6.</summary>
    public int Most { get; init; } = 3;

    /// <summary>Step a gap can be read and set by, µm; 1 to 100.</summary>
    public double GapStepMicrometres { get; init; } = 10;

    /// <summary>Most one move changes a gap by, per cent of it; above 0, at most 50. One step is always allowed.</summary>
    public double MostGapPercent { get; init; } = 20;

    /// <summary>Most steps of one move; 1 to 10.</summary>
    public int MostSteps { get; init; } = 5;

    /// <summary>Least gap the machines can be set to, µm; 10 to 2000.</summary>
    public double LeastGapMicrometres { get; init; } = 20;

    /// <summary>Most gap, µm; at most 2000.</summary>
    public double MostGapMicrometres { get; init; } = 1500;

    /// <summary>Step of a purifier's air, m/s; 0 leaves air as it is; at most 0.5.</summary>
    public double AirStepMetresPerSecond { get; init; } = 0.05;

    /// <summary>Step of the flow of wheat, per cent of it; 0 leaves it as it is; at most 5.</summary>
    public double FlowStepPercent { get; init; }

    /// <summary>Openings of cloths on hand, µm; empty leaves cloths as they are.</summary>
    public IReadOnlyList<double> ClothsOnHand { get; init; } = [];

    /// <summary>Most a cloth on hand may be off the one it replaces, per cent; above 0, at most 100.</summary>
    public double MostClothPercent { get; init; } = 25;

    /// <summary>Most the load of any passage may rise by, per cent, so that none chokes; 0 to 100.</summary>
    public double MostLoadRisePercent { get; init; } = 10;

    /// <summary>Passages that are left as they are.</summary>
    public IReadOnlyList<string> Leave { get; init; } = [];

    internal IEnumerable<string> Faults()
    {
        (bool Holds, string Otherwise)[] rules =
        [
            (Most is >= 1 and <= 6, "A set has 1 to 6 moves."),
            (GapStepMicrometres is >= 1 and <= 100, "The step of a gap lies from 1 to 100 µm."),
            (MostGapPercent is > 0 and <= 50, "A move changes a gap by above 0 and at most 50 % of it."),
            (MostSteps is >= 1 and <= 10, "A move has 1 to 10 steps."),
            (LeastGapMicrometres >= 10 && MostGapMicrometres <= 2000 && LeastGapMicrometres < MostGapMicrometres, "The least gap lies from 10 µm, the most to 2000 µm, and the least below the most."),
            (AirStepMetresPerSecond is >= 0 and <= 0.5, "The step of air lies from 0 (left as it is) to 0.5 m/s."),
            (FlowStepPercent is >= 0 and <= 5, "The step of the flow of wheat lies from 0 (left as it is) to 5 %."),
            (ClothsOnHand.Count <= 40 && ClothsOnHand.All(c => c is > 0 and <= 4000), "Cloths on hand are at most 40 openings, each above 0 and at most 4000 µm."),
            (MostClothPercent is > 0 and <= 100, "A cloth on hand may be off by above 0 and at most 100 %."),
            (MostLoadRisePercent is >= 0 and <= 100, "The load of a passage may rise by 0 to 100 %."),
        ];
        return rules.Where(r => !r.Holds).Select(r => r.Otherwise);
    }
}
