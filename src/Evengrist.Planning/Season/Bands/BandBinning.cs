using Evengrist.Planning.Solving;
using Evengrist.Season;
using Evengrist.Season.Bands;

namespace Evengrist.Planning.Season.Bands;

/// <summary>Which bins each band takes: a bin holds one band. Model: docs/model/season-bands.md.</summary>
public static class BandBinning
{
    private const double EvenWeight = 1e-3, BinWeight = 1e-2;

    /// <summary>Shares bins out so that the least wheat finds no room, then so that no band is much worse off than another, then with as few bins as will do.</summary>
    /// <param name="row">The bands, with the most that will lie there of each.</param>
    /// <param name="bins">The bins at hand with their free room, t.</param>
    /// <returns>One row for each band; null where there are fewer bins than bands.</returns>
    public static IReadOnlyList<BandBins>? Share(BandRow row, IReadOnlyList<SeasonHome> bins)
    {
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(bins);
        var bands = row.Design.Bands;
        if (bins.Count < bands.Count)
        {
            return null;
        }

        var problem = new LinearProblem();
        var worst = problem.Column("worst", 0, 1, EvenWeight * Math.Max(1, row.MostTonnes.Sum()));
        var takes = new int[bands.Count, bins.Count];
        for (var b = 0; b < bands.Count; b++)
        {
            var left = problem.Column($"left.{b}", 0, double.PositiveInfinity, 1);
            var (room, one, even) = (problem.Row($"room.{b}", row.MostTonnes[b], double.PositiveInfinity), problem.Row($"one.{b}", 1, double.PositiveInfinity), problem.Row($"even.{b}", 0, double.PositiveInfinity));
            problem.Put(room, left, 1);
            problem.Put(even, worst, Math.Max(1, row.MostTonnes[b]));
            problem.Put(even, left, -1);
            for (var i = 0; i < bins.Count; i++)
            {
                takes[b, i] = problem.Column($"takes.{b}.{i}", 0, 1, BinWeight, whole: true);
                problem.Put(room, takes[b, i], bins[i].CapacityTonnes);
                problem.Put(one, takes[b, i], 1);
            }
        }

        for (var i = 0; i < bins.Count; i++)
        {
            var once = problem.Row($"once.{i}", double.NegativeInfinity, 1);
            for (var b = 0; b < bands.Count; b++)
            {
                problem.Put(once, takes[b, i], 1);
            }
        }

        var answer = LinearSolver.Solve(problem, new SolveOptions { Longest = TimeSpan.FromSeconds(2) });
        if (!answer.HasValues)
        {
            throw new InvalidOperationException($"Bins could not be shared out among {bands.Count} bands: {answer.Exit}.");
        }

        return [.. bands.Select((band, b) =>
        {
            SeasonHome[] own = [.. bins.Where((_, i) => answer.Values[takes[b, i]] > 0.5).OrderByDescending(x => x.CapacityTonnes).ThenBy(x => x.Code, StringComparer.Ordinal)];
            return new BandBins(band, row.MostTonnes[b], [.. own.Select(x => x.Code)], own.Sum(x => x.CapacityTonnes));
        })];
    }
}
