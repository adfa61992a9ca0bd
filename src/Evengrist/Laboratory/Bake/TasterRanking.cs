namespace Evengrist.Laboratory.Bake;

/// <summary>The flours of a bake as one taster put them, without knowing which is which.</summary>
/// <param name="Taster">Who tasted.</param>
/// <param name="Places">The best first; flours of one place are tied.</param>
public sealed record TasterRanking(string Taster, IReadOnlyList<IReadOnlyList<string>> Places)
{
    /// <summary>Ranks of flours in a given order: 1 for the best; ties share the mean of their ranks.</summary>
    /// <param name="flours">All flours of the bake.</param>
    public IReadOnlyList<double> RanksOf(IReadOnlyList<string> flours)
    {
        ArgumentNullException.ThrowIfNull(flours);
        return [.. flours.Select(f => Places.TakeWhile(p => !p.Contains(f)).Sum(p => p.Count) + ((Places.First(p => p.Contains(f)).Count + 1) / 2.0))];
    }

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    /// <param name="flours">All flours of the bake.</param>
    public IReadOnlyList<string> Faults(IReadOnlyCollection<string> flours)
    {
        ArgumentNullException.ThrowIfNull(flours);
        string[] named = [.. Places.SelectMany(p => p)];
        return
        [
            .. string.IsNullOrWhiteSpace(Taster) ? ["A ranking says who tasted."] : Array.Empty<string>(),
            .. named.Except(flours).Select(f => $"{Taster} ranked {f}, of which there is no loaf."),
            .. flours.Except(named).Select(f => $"{Taster} did not rank {f}: rank every flour of the bake."),
            .. named.GroupBy(f => f).Where(g => g.Count() > 1).Select(g => $"{Taster} ranked {g.Key} twice."),
        ];
    }

    /// <summary>Whether the flours differ by all rankings; null with fewer than two tasters or flours.</summary>
    /// <param name="rankings">Of one bake, without faults.</param>
    /// <param name="flours">All flours of it.</param>
    public static RankTest? Judged(IReadOnlyList<TasterRanking> rankings, IReadOnlyList<string> flours)
    {
        ArgumentNullException.ThrowIfNull(rankings);
        ArgumentNullException.ThrowIfNull(flours);
        return rankings.Count < 2 || flours.Count < 2 ? null : RankTest.Of([.. rankings.Select(r => r.RanksOf(flours))]);
    }
}
