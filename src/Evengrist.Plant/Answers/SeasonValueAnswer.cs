using Evengrist.Plant.Cases;
using Evengrist.Season;
using Evengrist.Season.Lots;

namespace Evengrist.Plant.Answers;

/// <summary>What wheat is worth to the rest of a crop year, money of the season.</summary>
/// <param name="Apart">What a t of the wheat asked about is worth, kept apart.</param>
/// <param name="Curve">The same along a property.</param>
/// <param name="Bins">The truck in each bin, best first; empty where no tonnes were given.</param>
/// <param name="Wheats">What one more t of each wheat of the plan is worth in the period asked about.</param>
public sealed record SeasonValueAnswer(SeasonWorthAnswer Apart, IReadOnlyList<SeasonWorthAnswer> Curve, IReadOnlyList<SeasonBinAnswer> Bins, IReadOnlyList<SeasonWheatAnswer> Wheats)
{
    /// <summary>The worth of the whole lot; null where none was asked about.</summary>
    public SeasonLotAnswer? Lot { get; init; }

    /// <summary>The worth, from a linear plan; or why there is none.</summary>
    public static Reply<SeasonValueAnswer> Of(SeasonOutcome outcome, LotOutcome? lot, SeasonValueCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        if (outcome is not SeasonPlanned planned)
        {
            return new Reply<SeasonValueAnswer>(null, SeasonAnswer.Of(outcome).Reasons);
        }

        if (lot is LotNotWorthed { Why: var why })
        {
            return new Reply<SeasonValueAnswer>(null, SeasonAnswer.Of(why).Reasons);
        }

        var worth = new SeasonWorth(planned.Plan);
        var value = posed.Wheat.Quality.TryGet(posed.Along, out var own) ? own.Value : (double?)null;
        return new Reply<SeasonValueAnswer>(
            new SeasonValueAnswer(
                Of(planned.Plan, value, worth.OfTonne(posed.Wheat, posed.Period)),
                posed.Values.Count == 0 ? [] : [.. worth.Curve(posed.Wheat, posed.Along, posed.Values, posed.Period).Select(p => Of(planned.Plan, p.Value, p.Worth))],
                posed.Wheat.OpeningTonnes <= 0 ? [] : [.. worth.OfTruck(posed.Wheat).Select(b => new SeasonBinAnswer(b.Wheat, b.Home, Number(b.Money), Number(b.Money / posed.Wheat.OpeningTonnes), Number(b.OfTonnes), Number(b.OfChange), b.WhyNot))],
                [.. posed.Season.AllWheats.Select(w => new SeasonWheatAnswer(w.Code, w.WheatClass, worth.Of(w.Code, posed.Period)))])
            {
                Lot = lot is LotWorth whole ? SeasonLotAnswer.Of(whole) : null,
            },
            []);
    }

    private static double? Number(double value) => double.IsFinite(value) ? value : null;

    private static SeasonWorthAnswer Of(SeasonPlan plan, double? value, TonneWorth worth) => new(value, worth.PerTonne, worth.Flour, worth.Period, worth.Flour is null ? null : SeasonAnswer.From(plan, worth.Period));
}

/// <summary>What a t is worth, for which flour, in which period and from which day on; no flour where it is worth most left over.</summary>
public sealed record SeasonWorthAnswer(double? Value, double PerTonne, string? Flour, int Period, string? From);

/// <summary>What the truck is worth in a bin; no money where it cannot go there, with why.</summary>
public sealed record SeasonBinAnswer(string Wheat, string Bin, double? Money, double? PerTonne, double? OfTonnes, double? OfChange, string WhyNot);

/// <summary>What one more t of a wheat of the plan is worth.</summary>
public sealed record SeasonWheatAnswer(string Wheat, string WheatClass, double PerTonne);
