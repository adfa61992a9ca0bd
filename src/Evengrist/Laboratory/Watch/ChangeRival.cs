using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Watch;

/// <summary>One way in which readings may have moved: along one direction of (reference, difference, wheat), by a step or a drift; or along two at once.</summary>
/// <param name="Cause">What it is.</param>
/// <param name="Along">What a size of 1 does to reference, difference and wheat.</param>
/// <param name="Second">The second direction where two moved; null for one.</param>
/// <param name="Unit">The standard deviation in which sizes are thought of beforehand.</param>
/// <param name="LogChance">Logarithm of the odds that it begins between two given pairs.</param>
/// <param name="IsDrift">Whether it grows by its size from pair to pair.</param>
/// <param name="First">Fewest pairs before its start: 0 where the level before is known without pairs.</param>
internal sealed record ChangeRival(WatchCause Cause, double[] Along, double[]? Second, double Unit, double LogChance, bool IsDrift, int First)
{
    /// <summary>The size worth finding, in the unit.</summary>
    public const double Sought = 2;

    // [ours] Steps of about twice the unit, and now and then larger ones; a drift of up to about a tenth to a half of it a pair.
    private static readonly (double Mean, double Deviation, double Share)[] Sizes = [(Sought, 0.3, 0.8), (4, 1.5, 0.2)];

    private const double DriftSpread = 0.25, BothSpread = 2.2, RareShare = 0.1, DriftShare = 0.1;

    public static IEnumerable<ChangeRival> Of(WatchSpec spec, WatchDeviations by)
    {
        var rest = 1 - (spec.ChangePerPair * (2 + RareShare + DriftShare + (spec.HasWheat ? 1 : 0)));
        var chance = Math.Log(spec.ChangePerPair / rest);
        double[] instrument = [0, 1, 0], flour = [1, 0, 1], mill = [1, 0, 0];
        yield return new(WatchCause.Instrument, instrument, null, by.Pair, chance, false, 0);
        yield return new(WatchCause.InstrumentDrift, instrument, null, by.Pair, chance + Math.Log(DriftShare), true, 1);
        yield return new(WatchCause.Flour, flour, null, by.Level, chance, false, 1);
        if (spec.HasWheat)
        {
            yield return new(WatchCause.Mill, mill, null, by.Level, chance, false, 1);
        }

        yield return new(WatchCause.Both, instrument, flour, by.Pair, chance + Math.Log(RareShare), false, 1);
    }

    /// <summary>Its starts.</summary>
    /// <param name="whitened">Readings less their level, times the inverse covariance.</param>
    /// <param name="inverse">Inverse covariance of one row.</param>
    /// <param name="taken">What finding the level takes away: inverse · spread of the level · inverse.</param>
    public IReadOnlyList<ChangeStart> Starts(double[][] whitened, Matrix<double> inverse, Matrix<double> taken)
    {
        var n = whitened.Length;
        var starts = new ChangeStart[n - First];
        var (own, gone) = (Form(Along, inverse, Along), Form(Along, taken, Along));
        var (cross, crossGone, other, otherGone) = Second is null ? default : (Form(Along, inverse, Second), Form(Along, taken, Second), Form(Second, inverse, Second), Form(Second, taken, Second));
        var (score, tail, score2) = (0.0, 0.0, 0.0);
        for (var after = n - 1; after >= First; after--)
        {
            var row = Dot(Along, whitened[after]);
            (tail, score) = (tail + row, IsDrift ? score + tail + row : score + row);
            double m = n - after;
            var (count, weight) = IsDrift ? (m * (m + 1) / 2, m * (m + 1) * ((2 * m) + 1) / 6) : (m, m);
            var known = (weight * own) - (count * count * gone);
            if (Second is null)
            {
                starts[after - First] = new(after, LogChance + (IsDrift ? Drifted(score, known) : Stepped(score, known)), score / known, 1 / Math.Sqrt(known));
                continue;
            }

            score2 += Dot(Second, whitened[after]);
            starts[after - First] = Two(after, (score, known), (score2, (m * other) - (m * m * otherGone)), (m * cross) - (m * m * crossGone));
        }

        return starts;
    }

    private double Drifted(double score, double known)
    {
        var prior = Square(DriftSpread * Unit);
        return (-0.5 * Math.Log(1 + (known * prior))) + (0.5 * score * score / (known + (1 / prior)));
    }

    // Half the sizes above 0, half below.
    private double Stepped(double score, double known)
    {
        Span<double> powers = stackalloc double[2 * Sizes.Length];
        var largest = double.NegativeInfinity;
        for (var i = 0; i < powers.Length; i++)
        {
            var (mean, spread, _) = Sizes[i / 2];
            var prior = Square(spread * Unit);
            var pull = (i % 2 == 0 ? mean : -mean) * Unit / prior;
            powers[i] = 0.5 * ((Square(score + pull) / (known + (1 / prior))) - (Square(pull) * prior));
            largest = Math.Max(largest, powers[i]);
        }

        var sum = 0.0;
        for (var i = 0; i < powers.Length; i++)
        {
            var (_, spread, share) = Sizes[i / 2];
            sum += share / 2 / Math.Sqrt(1 + (known * Square(spread * Unit))) * Math.Exp(powers[i] - largest);
        }

        return largest + Math.Log(sum);
    }

    private ChangeStart Two(int after, (double Score, double Known) one, (double Score, double Known) two, double cross)
    {
        var prior = Square(BothSpread * Unit);
        var (a, d) = (one.Known + (1 / prior), two.Known + (1 / prior));
        var determinant = (a * d) - (cross * cross);
        var square = ((one.Score * one.Score * d) - (2 * one.Score * two.Score * cross) + (two.Score * two.Score * a)) / determinant;
        var plain = (one.Known * two.Known) - (cross * cross);
        return new(after, LogChance + (0.5 * (square - Math.Log(determinant * prior * prior))), ((one.Score * two.Known) - (two.Score * cross)) / plain, Math.Sqrt(two.Known / plain));
    }

    private static double Dot(double[] along, double[] row)
    {
        var sum = 0.0;
        for (var i = 0; i < row.Length; i++)
        {
            sum += along[i] * row[i];
        }

        return sum;
    }

    private static double Form(double[] left, Matrix<double> middle, double[] right)
    {
        var sum = 0.0;
        for (var i = 0; i < middle.RowCount; i++)
        {
            for (var j = 0; j < middle.ColumnCount; j++)
            {
                sum += left[i] * middle[i, j] * right[j];
            }
        }

        return sum;
    }

    private static double Square(double x) => x * x;
}
