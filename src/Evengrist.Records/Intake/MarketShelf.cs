using Evengrist.Intake.Deciding;

namespace Evengrist.Records.Intake;

/// <summary>The limits of each market as the mill keeps them; those it never changed stand as they were read or remembered.</summary>
public static class MarketShelf
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "market";

    /// <summary>Every market, the mill's own versions in place of those shipped, by code.</summary>
    public static IReadOnlyList<Market> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var kept = new Dictionary<string, Market>(StringComparer.OrdinalIgnoreCase);
        foreach (var paper in mill.Papers(Kind).All())
        {
            if (Market.TryRead(paper.Json, out var market, out _))
            {
                kept[paper.Code] = market!;
            }
        }

        return [.. Markets.All.Where(m => !kept.ContainsKey(m.Code)).Concat(kept.Values).OrderBy(m => m.Code, StringComparer.OrdinalIgnoreCase)];
    }

    /// <summary>Those whose limits hold for this mill.</summary>
    public static IReadOnlyList<Market> Of(Mill mill, HouseRules house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return [.. All(mill).Where(m => house.Markets.Contains(m.Code, StringComparer.OrdinalIgnoreCase))];
    }

    /// <summary>Keeps a market's limits as a further version.</summary>
    /// <exception cref="ArgumentException">They cannot be; every fault is named.</exception>
    public static int Keep(Mill mill, Market market, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(market);
        return market.Faults() is { Count: > 0 } faults ? throw new ArgumentException(string.Join(" ", faults), nameof(market)) : mill.Papers(Kind).KeepNext(market.Code, market.ToJson(), by);
    }
}
