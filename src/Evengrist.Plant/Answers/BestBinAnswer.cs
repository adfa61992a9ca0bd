using Evengrist.Bins.BestBin;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>The bins for a load in plain values, best first; per cents at 12 % moisture where they are protein.</summary>
public sealed record BestBinAnswer(IReadOnlyList<RankedAnswer> Ranked, IReadOnlyList<InfeasibleBin> NotPossible, string Note)
{
    private const string Said = "A decision aid: a person decides, and gates are opened by the site's own procedure.";

    /// <summary>Answers a case.</summary>
    public static Reply<BestBinAnswer> To(BestBinCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return Of(BestBinModel.Rank(posed.Load, posed.Bins, posed.Values is { } values ? (bin, protein) => values.PerTonne(posed.Load.Class, protein) : null, posed.Values?.Currency ?? ""));
    }

    /// <summary>An outcome in plain values.</summary>
    public static Reply<BestBinAnswer> Of(BestBinOutcome outcome) => outcome switch
    {
        BinsRanked ranked => new(new BestBinAnswer([.. ranked.Ranked.Select((b, i) => RankedAnswer.Of(i + 1, b))], ranked.Infeasible, Said), []),
        NoBin none => new(null, [.. none.Reasons, .. none.Infeasible.Select(i => $"{i.Bin}: {string.Join("; ", i.Reasons)}.")]),
        _ => throw new InvalidOperationException($"Ranking ended as {outcome?.GetType().Name}."),
    };
}

/// <summary>One bin that can take the load.</summary>
public sealed record RankedAnswer(
    int Rank, string Bin, string Standing, string Why, decimal? ChanceOfBandPercent, decimal? PurityPercent, decimal? PurityWithLoadPercent, decimal? ProteinPercent, decimal? ProteinWithLoadPercent,
    decimal? FallingNumberWithLoad, decimal? RoomLeftTonnes, decimal? MoneyPerTonneOfLoad, decimal? MoneyStandardUncertainty, string MoneyUnit, decimal? YearPerTonneOfLoad, string Layer, string CarryOver)
{
    internal static RankedAnswer Of(int rank, RankedBin bin) => new(
        rank, bin.Bin, bin.Standing switch { BandStanding.Belongs => "belongs", BandStanding.NoBand => "no band", _ => "stranger" }, bin.Why, bin.Chance?.Value, bin.PurityBefore?.Value, bin.PurityAfter?.Value,
        bin.ProteinBefore?.Value, bin.ProteinAfter?.Value, bin.FallingNumberAfter?.Value, bin.RoomLeft?.Value, bin.MoneyPerTonne?.Value, bin.MoneyPerTonne?.StandardUncertainty, bin.MoneyPerTonne?.Unit ?? bin.YearPerTonne?.Unit ?? "", bin.YearPerTonne?.Value, bin.Layer, bin.CarryOver);
}
