using Evengrist.Season.Bands;

namespace Evengrist.Plant.Answers;

/// <summary>What bands cost the year, by their number.</summary>
/// <param name="Rows">One band first.</param>
/// <param name="Currency">Of the money.</param>
public sealed record SeasonBandsAnswer(IReadOnlyList<SeasonBandRow> Rows, string Currency)
{
    /// <summary>The rows, or why there are none.</summary>
    /// <param name="outcome">What came of it.</param>
    /// <param name="share">The bins of a row's bands; null where no bins are known or they are too few.</param>
    public static Reply<SeasonBandsAnswer> Of(BandsOutcome outcome, Func<BandRow, IReadOnlyList<BandBins>?> share)
    {
        ArgumentNullException.ThrowIfNull(share);
        return outcome switch
        {
            BandsPlanned planned => new Reply<SeasonBandsAnswer>(new SeasonBandsAnswer([.. planned.Rows.Select((r, i) => Row(r, i > 0 ? planned.Rows[i - 1].Cost - r.Cost : null, share(r)))], planned.Currency), []),
            BandsNotPlanned { Why: var why } => new Reply<SeasonBandsAnswer>(null, SeasonAnswer.Of(why).Reasons),
            _ => throw new ArgumentException($"Bands ended as {outcome?.GetType().Name}.", nameof(outcome)),
        };
    }

    private static SeasonBandRow Row(BandRow row, double? saves, IReadOnlyList<BandBins>? bins) => new(
        row.Design.Bands.Count, row.Cost, saves, Finite(row.EvenCost), [.. row.Design.Bands.Select((b, i) => Band(b, row.MostTonnes[i], bins?[i]))],
        row.Commingled is { } slip ? new SeasonCommingled(Finite(slip.Lower.From), Finite(slip.Lower.To), Finite(slip.Upper.From), Finite(slip.Upper.To), slip.Cost) : null);

    private static SeasonBand Band(HarvestBand band, double most, BandBins? bins) => new(
        Finite(band.From), Finite(band.To), band.FallingNumberFrom > 0 ? band.FallingNumberFrom : null, Finite(band.FallingNumberTo), band.Tonnes, most, band.MoisturePercent,
        band.Quality.Values.ToDictionary(v => v.Key.ToString(), v => v.Value.Value), band.Quality.Values.Where(v => v.Value.Basis.IsStated).ToDictionary(v => v.Key.ToString(), v => v.Value.Basis.ToString()), 100 * band.Strays,
        bins?.Bins, bins?.RoomTonnes, bins?.ShortTonnes);

    private static double? Finite(double value) => double.IsFinite(value) ? value : null;
}

/// <summary>A number of bands: what the year costs, what the last band saves, what bands of even tonnes would cost, and a slip between neighbours.</summary>
public sealed record SeasonBandRow(int Bands, double Cost, double? SavesAgainstOneLess, double? EvenCost, IReadOnlyList<SeasonBand> Of, SeasonCommingled? Commingled);

/// <summary>A band; no edge where there is none. Protein edges on the basis asked for, falling number in s.</summary>
public sealed record SeasonBand(
    double? From, double? To, double? FallingNumberFrom, double? FallingNumberTo, double Tonnes, double MostTonnes, double MoisturePercent, IReadOnlyDictionary<string, double> Quality,
    IReadOnlyDictionary<string, string> Basis, double StraysPercent, IReadOnlyList<string>? Bins, double? RoomTonnes, double? ShortTonnes);

/// <summary>Two neighbours in one bin: their edges, and by how much the year is dearer.</summary>
public sealed record SeasonCommingled(double? LowerFrom, double? LowerTo, double? UpperFrom, double? UpperTo, double Cost);
