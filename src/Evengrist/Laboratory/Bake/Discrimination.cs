using MathNet.Numerics.Distributions;
using MathNet.Numerics.Integration;
using MathNet.Numerics.RootFinding;

namespace Evengrist.Laboratory.Bake;

/// <summary>Whether tasters tell two breads apart, by how many answers are right [ISO 4120 triangle, ISO 5495 paired, from memory].</summary>
public static class Discrimination
{
    /// <summary>Chance of a right answer in a triangle where nothing can be told.</summary>
    public const double TriangleChance = 1.0 / 3;

    /// <summary>The same in a paired test.</summary>
    public const double PairChance = 0.5;

    private const double Widest = 10;

    /// <summary>Chance of so many right answers or more where nothing can be told.</summary>
    /// <param name="tests">Answers, 1 to 100,000.</param>
    /// <param name="right">Right ones, 0 to all.</param>
    /// <param name="chance">Chance of a right answer by guessing.</param>
    /// <exception cref="ArgumentOutOfRangeException">A figure cannot be.</exception>
    public static double P(int tests, int right, double chance)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(tests, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(tests, 100_000);
        ArgumentOutOfRangeException.ThrowIfNegative(right);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(right, tests);
        return right == 0 ? 1 : 1 - Binomial.CDF(chance, tests, right - 1);
    }

    /// <summary>Fewest right answers that happen by guessing at most with a chance; null where not even all are enough.</summary>
    /// <param name="tests">Answers.</param>
    /// <param name="chance">Chance of a right answer by guessing.</param>
    /// <param name="level">The chance allowed; half of it for a two-sided question.</param>
    public static int? LeastRight(int tests, double chance, double level) =>
        Enumerable.Range(0, tests + 1).Select(right => (int?)right).FirstOrDefault(right => P(tests, right!.Value, chance) <= level);

    /// <summary>Chance of a right answer in a triangle at a sensory distance d′ ≥ 0 [Thurstone's model, from memory].</summary>
    public static double TriangleRight(double distance)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(distance);
        var shift = distance * Math.Sqrt(2.0 / 3);
        double At(double z) => (Normal.CDF(0, 1, (-z * Math.Sqrt(3)) + shift) + Normal.CDF(0, 1, (-z * Math.Sqrt(3)) - shift)) * Normal.PDF(0, 1, z);
        return 2 * GaussLegendreRule.Integrate(At, 0, Widest, 128);
    }

    /// <summary>The sensory distance a share of right answers in a triangle stands for; 0 at or below chance, null where all are right.</summary>
    /// <param name="share">0 to 1.</param>
    public static double? TriangleDistance(double share) => share <= TriangleChance ? 0 : share >= TriangleRight(Widest) ? null : Brent.FindRoot(d => TriangleRight(d) - share, 0, Widest, 1e-10, 200);
}
