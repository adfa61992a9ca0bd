using System.Globalization;
using Evengrist.Intake.Grading;

namespace Evengrist.Intake.Sampling;

/// <summary>The edges between the bands of a house class, by one of its rows.</summary>
/// <remarks>A row compares recorded values: at least 13.0 at one decimal counts from a true value of 12.95 on, at most 1.0 up to 1.05. Model: docs/model/sampling.md.</remarks>
public static class HouseEdges
{
    /// <summary>Every edge of a row, rising.</summary>
    public static IReadOnlyList<Edge> Of(HouseClass house, HouseLimit row)
    {
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(row);
        var half = 0.5m / (decimal)Math.Pow(10, row.Decimals);
        var least = row.AtLeast.Count > 0;
        var (limits, outside) = (least ? row.AtLeast : row.AtMost, house.Outside.Length > 0 ? house.Outside : $"outside {house.Code}");
        return [.. limits.Select((limit, i) => (Limit: limit, Band: house.Bands[i], Next: i + 1 < house.Bands.Count ? house.Bands[i + 1] : outside))
            .Where(b => b.Limit is not null).GroupBy(b => b.Limit!.Value).OrderBy(g => g.Key)
            .Select(g => new Edge((double)(g.Key + (least ? -half : half)), string.Create(CultureInfo.InvariantCulture, $"{(least ? "at least" : "at most")} {g.Key}"),
                least ? g.Last().Next : g.First().Band, least ? g.First().Band : g.Last().Next))];
    }
}
