namespace Evengrist.Season;

/// <summary>A flour of the plan: what is wanted of it and what its wheat mix has to keep.</summary>
/// <param name="Code">Its code.</param>
/// <param name="Unit">Code of the mill unit that mills it.</param>
/// <param name="Demand">Flour wanted in each period, t, 0 or more.</param>
/// <param name="Yield">t of flour for a t of wheat, above 0, at most 1.</param>
/// <param name="UnmetPricePerTonne">What a t of flour that is not made is taken to cost, money per t, above 0.</param>
public sealed record SeasonFlour(string Code, string Unit, IReadOnlyList<double> Demand, double Yield, double UnmetPricePerTonne)
{
    /// <summary>Limits on the wheat mix.</summary>
    public IReadOnlyList<SeasonLimit> Limits { get; init; } = [];

    /// <summary>Classes that may go into it; empty for all.</summary>
    public IReadOnlyList<string> Classes { get; init; } = [];

    /// <summary>Codes of wheats and offers that may go into it; empty for all of the allowed classes.</summary>
    public IReadOnlyList<string> Wheats { get; init; } = [];

    /// <summary>A wheat that is in the mix at all makes up at least this share of it, 0 to 1. Kept by the plan that can be milled, not by the linear one.</summary>
    public double LeastShare { get; init; }

    /// <summary>Most wheats drawn together; null for no such limit. Kept by the plan that can be milled, not by the linear one.</summary>
    public int? MostGates { get; init; }

    /// <summary>Flour in store at the start, t.</summary>
    public double OpeningTonnes { get; init; }

    /// <summary>Most flour that can lie in store at the end of a period, t; 0 where it is milled as it is wanted.</summary>
    public double StockMost { get; init; }

    /// <summary>Least flour that is to lie in store at the end of a period, t.</summary>
    public double StockLeast { get; init; }

    /// <summary>What a t of by-product is worth, money per t; wheat less flour is by-product.</summary>
    public double ByProductPerTonne { get; init; }
}
