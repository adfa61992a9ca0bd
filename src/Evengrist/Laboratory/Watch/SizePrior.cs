namespace Evengrist.Laboratory.Watch;

/// <summary>Logarithm of how many times better a score fits a move than none, sizes integrated out in closed form. Sizes are in the unit of the direction.</summary>
internal static class SizePrior
{
    /// <summary>The size worth finding, in the unit.</summary>
    public const double Sought = 2;

    // [ours] Steps of about the size sought, and now and then larger ones; two at once each of about it, and now and then of any; a drift of up to about a tenth to a half of the unit a pair.
    private const double Near = 0.3, Larger = 4, LargerSpread = 1.5, LargerShare = 0.2, Any = 3, AnyShare = 0.1, DriftSpread = 0.25;

    /// <summary>A drift.</summary>
    public static double OfDrift(MoveScore move) => Normal(move, 0, DriftSpread * move.Unit);

    /// <summary>A step; half the sizes above 0, half below.</summary>
    public static double OfStep(MoveScore move) => Either(
        Math.Log(1 - LargerShare) + EitherWay(move, Sought * move.Unit, Near * move.Unit),
        Math.Log(LargerShare) + EitherWay(move, Larger * move.Unit, LargerSpread * move.Unit));

    /// <summary>Two steps at once along two directions, each its own way.</summary>
    /// <param name="one">The first.</param>
    /// <param name="two">The second.</param>
    /// <param name="cross">What both share.</param>
    public static double OfTwo(MoveScore one, MoveScore two, double cross)
    {
        var near = Math.Log((1 - AnyShare) / 2);
        return Either(
            Either(near + OfTwo(one, two, cross, 1), near + OfTwo(one, two with { Score = -two.Score }, -cross, 1)),
            Math.Log(AnyShare) + OfTwo(one, two, cross, 0));
    }

    // Both about the size sought, the same way (above or below alike), or about none.
    private static double OfTwo(MoveScore one, MoveScore two, double cross, int way)
    {
        var spread = way == 0 ? Any : Near;
        var (p, q) = (1 / Square(spread * one.Unit), 1 / Square(spread * two.Unit));
        var (a, d) = (one.Known + p, two.Known + q);
        var determinant = (a * d) - (cross * cross);
        var (x, y) = (way * Sought * one.Unit * p, way * Sought * two.Unit * q);
        // Half the quadratic form at (score ± pull): what is even in the sign, and what is odd.
        var even = 0.5 * (((Square(one.Score) + (x * x)) * d) - (2 * ((one.Score * two.Score) + (x * y)) * cross) + ((Square(two.Score) + (y * y)) * a)) / determinant;
        var odd = ((one.Score * x * d) - (((one.Score * y) + (two.Score * x)) * cross) + (two.Score * y * a)) / determinant;
        return even - (0.5 * ((x * x / p) + (y * y / q) + Math.Log(determinant / (p * q)))) + LogCosh(odd);
    }

    private static double EitherWay(MoveScore move, double mean, double spread)
    {
        var precision = 1 / Square(spread);
        return Normal(move, mean, spread) + LogCosh(move.Score * mean * precision / (move.Known + precision));
    }

    // About a mean; what is odd in the score's sign left out.
    private static double Normal(MoveScore move, double mean, double spread)
    {
        var precision = 1 / Square(spread);
        return 0.5 * (((Square(move.Score) + Square(mean * precision)) / (move.Known + precision)) - (mean * mean * precision) - Math.Log(1 + (move.Known / precision)));
    }

    private static double Either(double one, double two) => Math.Max(one, two) + Math.Log(1 + Math.Exp(-Math.Abs(one - two)));

    private static double LogCosh(double x) => Math.Abs(x) + Math.Log((1 + Math.Exp(-2 * Math.Abs(x))) / 2);

    private static double Square(double x) => x * x;
}
