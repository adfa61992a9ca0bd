namespace Evengrist.Laboratory.Sampling;

/// <summary>Code letters by lot size and level of MIL-STD-105E, which is in the public domain [read through R package AQLSchemes 1.7-2, which names it].</summary>
public static class TableLetters
{
    /// <summary>Levels, the most usual is II.</summary>
    public static IReadOnlyList<string> Levels { get; } = ["S-1", "S-2", "S-3", "S-4", "I", "II", "III"];

    private static readonly (int Most, string Letters)[] Rows =
    [
        (8, "AAAAAAB"), (15, "AAAAABC"), (25, "AABBBCD"), (50, "ABBCCDE"), (90, "BBCCCEF"), (150, "BBCDDFG"), (280, "BCDEEGH"), (500, "BCDEFHJ"), (1200, "CCEFGJK"),
        (3200, "CDEGHKL"), (10_000, "CDFGJLM"), (35_000, "CDFHKMN"), (150_000, "DEGJLNP"), (500_000, "DEGJMPQ"), (int.MaxValue, "DEHKNQR"),
    ];

    /// <summary>The letter.</summary>
    /// <param name="lot">Units in the lot, 2 or more.</param>
    /// <param name="level">One of <see cref="Levels"/>.</param>
    /// <exception cref="ArgumentException">The lot is smaller than 2, or there is no such level.</exception>
    public static char Of(int lot, string level)
    {
        var column = Levels.TakeWhile(l => l != level).Count();
        return lot < 2 || column == Levels.Count ? throw new ArgumentException($"Lots are of 2 units or more and levels are {string.Join(", ", Levels)}; got {lot}, {level}.", nameof(lot)) : Rows.First(r => lot <= r.Most).Letters[column];
    }
}
