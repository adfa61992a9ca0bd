namespace Evengrist.Season.Terms;

/// <summary>What is wanted of a flour and what its wheat has to keep.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Name">What people call it.</param>
/// <param name="Unit">Code of the mill unit that mills it.</param>
/// <param name="TonnesPerWeek">Flour wanted in a week, t, 0 or more.</param>
/// <param name="Yield">t of flour for a t of wheat, above 0, at most 1.</param>
/// <param name="UnmetPricePerTonne">What a t of flour that is not made is taken to cost, above 0.</param>
public sealed record FlourTerms(string Code, string Name, string Unit, double TonnesPerWeek, double Yield, double UnmetPricePerTonne)
{
    /// <summary>Times in which another amount is wanted; a later row goes before an earlier one.</summary>
    public IReadOnlyList<DemandTerms> Peaks { get; init; } = [];

    /// <summary>Limits on the wheat mix.</summary>
    public IReadOnlyList<LimitTerms> Limits { get; init; } = [];

    /// <summary>Classes that may go into it; empty for all.</summary>
    public IReadOnlyList<string> Classes { get; init; } = [];

    /// <summary>A wheat in the mix makes up at least this share of it, 0 to 1.</summary>
    public double LeastShare { get; init; }

    /// <summary>Most wheats drawn together; null for no such limit.</summary>
    public int? MostGates { get; init; }

    /// <summary>Flour that can lie in store over the end of a period, t.</summary>
    public double StockMost { get; init; }

    /// <summary>Flour that is to stay in store over the end of a period, t, 0 or more: it carries the flour through a busy week. Where less lies there at the start, that much.</summary>
    public double StockLeast { get; init; }

    /// <summary>Standard deviation of the whole year's demand, as a share, 0 or more.</summary>
    public double YearShare { get; init; }

    /// <summary>Standard deviation of a week's demand beside it, as a share, 0 or more.</summary>
    public double WeekShare { get; init; }

    /// <summary>How much of a week's difference is still there a week later, 0 to below 1.</summary>
    public double Hold { get; init; }

    /// <summary>What a t of by-product is worth.</summary>
    public double ByProductPerTonne { get; init; }

    /// <summary>Flour wanted in a period, t.</summary>
    public double DemandIn(SeasonPeriod period)
    {
        ArgumentNullException.ThrowIfNull(period);
        return Enumerable.Range(0, period.Days).Select(d => period.Start.PlusDays(d)).Sum(day => (Peaks.LastOrDefault(p => p.From <= day && day <= p.To)?.TonnesPerWeek ?? TonnesPerWeek) / 7);
    }
}
