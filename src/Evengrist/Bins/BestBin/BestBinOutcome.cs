using Evengrist.Quantities;

namespace Evengrist.Bins.BestBin;

/// <summary>What comes of asking for the best bin.</summary>
/// <param name="Infeasible">Bins that cannot take the load, each with why not, by code.</param>
public abstract record BestBinOutcome(IReadOnlyList<InfeasibleBin> Infeasible);

/// <summary>At least one bin can take the load.</summary>
/// <param name="Ranked">Every bin that can, best first.</param>
/// <param name="Infeasible">Those that cannot.</param>
public sealed record BinsRanked(IReadOnlyList<RankedBin> Ranked, IReadOnlyList<InfeasibleBin> Infeasible) : BestBinOutcome(Infeasible);

/// <summary>No bin can take the load, or the load itself cannot be.</summary>
/// <param name="Reasons">What to do.</param>
/// <param name="Infeasible">Each bin with why not.</param>
public sealed record NoBin(IReadOnlyList<string> Reasons, IReadOnlyList<InfeasibleBin> Infeasible) : BestBinOutcome(Infeasible);

/// <summary>A bin that cannot take the load.</summary>
/// <param name="Bin">Code.</param>
/// <param name="Reasons">Each a phrase.</param>
public sealed record InfeasibleBin(string Bin, IReadOnlyList<string> Reasons);

/// <summary>A bin that can take the load.</summary>
/// <param name="Bin">Code.</param>
/// <param name="Standing">How the load stands to the bin's band.</param>
public sealed record RankedBin(string Bin, BandStanding Standing)
{
    /// <summary>In a sentence, what speaks for or against it.</summary>
    public required string Why { get; init; }

    /// <summary>Chance that the load belongs to the band, %; null without a band.</summary>
    public Figure? Chance { get; init; }

    /// <summary>Share of the bin's content in its band now, %; null where not known.</summary>
    public Figure? PurityBefore { get; init; }

    /// <summary>The same with the load in it.</summary>
    public Figure? PurityAfter { get; init; }

    /// <summary>Room left with the load in it, t; null where no capacity is stated.</summary>
    public Figure? RoomLeft { get; init; }

    /// <summary>Protein of the bin now; null where not known.</summary>
    public Figure? ProteinBefore { get; init; }

    /// <summary>Protein of the bin with the load in it; null where what lies there was not read.</summary>
    public Figure? ProteinAfter { get; init; }

    /// <summary>Falling number with the load in it, by the liquefaction number, s; null where one of the two is not read.</summary>
    public Figure? FallingNumberAfter { get; init; }

    /// <summary>Money that blending gains or loses for each tonne of the load, against the load kept by itself; null where no values are known.</summary>
    public Figure? MoneyPerTonne { get; init; }

    /// <summary>What a tonne of the load is worth to the rest of the crop year here, against the load in a bin of its own; null before there is a plan.</summary>
    public Figure? YearPerTonne { get; init; }

    /// <summary>The layer it would make, in words.</summary>
    public required string Layer { get; init; }

    /// <summary>What is carried over from the last grain through the route, in words; empty where nothing is known.</summary>
    public string CarryOver { get; init; } = "";
}
