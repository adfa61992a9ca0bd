using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Bins;

/// <summary>The bins for a load at a moment, ranked.</summary>
/// <param name="Load">The load.</param>
/// <param name="Outcome">Ranked and infeasible bins.</param>
/// <param name="Remarks">What was supposed, each a sentence.</param>
public sealed record BestBinSight(TruckLoad Load, BestBinOutcome Outcome, IReadOnlyList<string> Remarks)
{
    /// <summary>What a load is taken to weigh where it is not weighed yet, t: a usual truck [design].</summary>
    public const double UsualTonnes = 26;

    /// <summary>Ranks the wheat bins as they stood at a moment, first in first out.</summary>
    /// <param name="view">The ledger.</param>
    /// <param name="shelf">What is kept about bins.</param>
    /// <param name="load">The load.</param>
    /// <param name="at">The moment.</param>
    /// <param name="remarks">What was supposed of the load.</param>
    /// <param name="year">The newest plan of the year, if there is one at hand.</param>
    public static BestBinSight Of(MillView view, BinShelf shelf, TruckLoad load, Instant at, IReadOnlyList<string>? remarks = null, TruckYear? year = null)
    {
        ArgumentNullException.ThrowIfNull(view);
        ArgumentNullException.ThrowIfNull(shelf);
        var values = shelf.Values;
        var outcome = BestBinModel.Rank(load, new BinCandidates(view, shelf, load, at).All(), values is null ? null : (_, protein) => values.PerTonne(load.Class, protein), year?.Currency ?? values?.Currency ?? "", year is null ? null : year.PerTonne);
        return new BestBinSight(load, outcome,
        [
            .. remarks ?? [],
            .. year?.Remarks ?? [],
            year is not null ? $"Within a band, ranked by what the load is worth to the year, by the plan from {year.PlannedFrom}." : values is null ? "No values of a tonne are kept, so that no money is shown." : $"Money by the values kept ({(values.Source.Length > 0 ? values.Source : "as entered")}); what a tonne is worth to the whole year is not in it.",
            "What lies in the bins goes by the truck readings, first in first out. Carry-over is an upper bound published for corn" + (shelf.CarryOver.IsMeasured ? ", by the residue weighed here." : ", not calibrated on this site."),
        ]);
    }

    /// <summary>What a probe sample that is not recorded yet showed.</summary>
    public static LoadQuality QualityOf(IReadOnlyList<Finding> findings, decimal? proteinUncertainty)
    {
        Finding? Of(Property what) => findings.FirstOrDefault(f => f.What == what && f.Fault is null);
        var (protein, weight) = (Of(Property.Protein), Of(Property.TestWeight));
        var scale = protein is null ? 1 : 88 / (100 - protein.Basis.MoisturePercent);
        return new LoadQuality(
            (double?)(protein?.Value * scale), (double?)(proteinUncertainty * scale), (double?)Of(Property.Moisture)?.Value, (double?)Of(Property.FallingNumber)?.Value,
            weight is null ? null : (double)TestWeight.Read(weight.Value, weight.Unit, durum: false).KilogramsPerHectolitre);
    }

    /// <summary>A load from what was read on a truck; null where class or protein is missing.</summary>
    public static (TruckLoad? Load, IReadOnlyList<string> Remarks) LoadOf(string wheat, Mass net, LoadQuality read)
    {
        ArgumentNullException.ThrowIfNull(read);
        if (string.IsNullOrWhiteSpace(wheat) || read.ProteinPercentAt12 is not { } protein)
        {
            return (null, [$"The best bin needs the {(string.IsNullOrWhiteSpace(wheat) ? "class" : "protein")} of the load."]);
        }

        var weighed = net > Mass.Zero;
        string[] remarks =
        [
            .. weighed ? Array.Empty<string>() : [FormattableString.Invariant($"Not weighed yet: {UsualTonnes} t are supposed.")],
            .. read.ProteinUncertainty is null ? ["The protein carries no ±: the chance of a band is all or nothing."] : Array.Empty<string>(),
        ];
        return (new TruckLoad(wheat.Trim(), weighed ? (double)net.Tonnes : UsualTonnes, protein, read.ProteinUncertainty ?? 0)
        {
            DryShare = 1 - ((read.MoisturePercent ?? 12) / 100), FallingNumber = read.FallingSeconds is >= 60 and <= 1000 ? read.FallingSeconds : null, TestWeight = read.TestWeight,
        }, remarks);
    }
}
