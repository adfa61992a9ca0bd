using NodaTime;

namespace Evengrist.Season;

/// <summary>All that a plan of the crop year is made from.</summary>
/// <remarks>Wheat in t as it lies, flour in t as it is sold, money in one currency. Model: docs/model/season.md.</remarks>
/// <param name="Periods">The steps, one after the other without a gap.</param>
/// <param name="Units">Mill units.</param>
/// <param name="Wheats">Wheats that lie in store or are to come.</param>
/// <param name="Flours">Flours.</param>
/// <param name="Currency">Code of the currency: USD …</param>
public sealed record SeasonSpec(
    IReadOnlyList<SeasonPeriod> Periods, IReadOnlyList<MillUnit> Units, IReadOnlyList<SeasonWheat> Wheats, IReadOnlyList<SeasonFlour> Flours, string Currency)
{
    /// <summary>Bins that bound how much can lie in them; a wheat names its own.</summary>
    public IReadOnlyList<SeasonHome> Homes { get; init; } = [];

    /// <summary>Wheats that can be bought.</summary>
    public IReadOnlyList<SeasonOffer> Offers { get; init; } = [];

    /// <summary>What is to be left at the end.</summary>
    public IReadOnlyList<CarryOut> CarryOut { get; init; } = [];

    /// <summary>What it costs to keep a t, wheat or flour, for a week, money per t·week; charged on what lies there at the end of each period.</summary>
    public double StoragePerTonneWeek { get; init; }

    /// <summary>What people have decided.</summary>
    public IReadOnlyList<SeasonChoice> Choices { get; init; } = [];

    /// <summary>The first day planned.</summary>
    /// <exception cref="InvalidOperationException">There is no period.</exception>
    public LocalDate Start => Periods.Count > 0 ? Periods[0].Start : throw new InvalidOperationException("The plan has no period.");

    /// <summary>The first day after the plan.</summary>
    /// <exception cref="InvalidOperationException">There is no period.</exception>
    public LocalDate End => Periods.Count > 0 ? Periods[^1].End : throw new InvalidOperationException("The plan has no period.");

    /// <summary>Wheats in store, to come and on offer, in this order.</summary>
    public IEnumerable<SeasonWheat> AllWheats => Wheats.Concat(Offers.Select(o => o.Wheat));
}
