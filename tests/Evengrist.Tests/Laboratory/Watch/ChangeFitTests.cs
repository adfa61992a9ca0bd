using Evengrist.Laboratory.Watch;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Tests.Laboratory.Watch;

/// <summary>The fits in closed form against the densities of all readings at once, by the normal law with the whole covariance written out.</summary>
public sealed class ChangeFitTests
{
    private const int Pairs = 9;

    private static readonly WatchDeviations By = new(0.05, 0.11, 0.1, 0.06, "posed");

    [Theory]
    [InlineData(false, 1)]
    [InlineData(false, 4)]
    [InlineData(false, 8)]
    [InlineData(true, 1)]
    [InlineData(true, 4)]
    [InlineData(true, 8)]
    public void Fits_OfEveryRival_AreRatiosOfNormalDensities(bool hasWheat, int after)
    {
        var spec = WatchCases.Spec(WatchCases.OfTheMill(Pairs).Pairs.Select((p, i) => p with { Wheat = hasWheat ? 13 + (0.07 * (i % 4)) : null }));
        var directions = ChangeRival.Directions(spec, By);
        double[][] rows = [.. new WatchJury(spec, By).Rows];
        var search = new ChangeSearch(spec, By);
        foreach (var (rival, starts) in search.Of(search.Sums(rows), Pairs))
        {
            double[] Along(int direction) => [.. Enumerable.Range(0, Pairs).SelectMany(i => directions[direction].Along.Select(x => i < after ? 0 : x * (rival.Cause == WatchCause.InstrumentDrift ? i - after + 1 : 1)))];
            var (one, unit) = (Along(rival.Direction), directions[rival.Direction].Unit);
            // Sizes as docs/model/meter-or-wheat.md gives them: share, mean and spread, in units.
            var fit = rival switch
            {
                { Cause: WatchCause.InstrumentDrift } => Ratio(rows, hasWheat, (one, 0, 0.25 * unit)),
                { Second: null } => (0.4 * Ratio(rows, hasWheat, (one, 2 * unit, 0.3 * unit))) + (0.4 * Ratio(rows, hasWheat, (one, -2 * unit, 0.3 * unit)))
                    + (0.1 * Ratio(rows, hasWheat, (one, 4 * unit, 1.5 * unit))) + (0.1 * Ratio(rows, hasWheat, (one, -4 * unit, 1.5 * unit))),
                { Second: { } second } => Two(one, unit, Along(second), directions[second].Unit),
            };
            Assert.Equal(Math.Log(fit), Assert.Single(starts, s => s.After == after).LogFit, 1e-5); // A level "free" is one within ± 1 000 here.

            double Two(double[] first, double firstUnit, double[] other, double otherUnit)
            {
                double Near(int a, int b) => Ratio(rows, hasWheat, (first, a * 2 * firstUnit, 0.3 * firstUnit), (other, b * 2 * otherUnit, 0.3 * otherUnit));
                return (0.225 * (Near(1, 1) + Near(1, -1) + Near(-1, 1) + Near(-1, -1))) + (0.1 * Ratio(rows, hasWheat, (first, 0, 3 * firstUnit), (other, 0, 3 * otherUnit)));
            }
        }
    }

    [Fact]
    public void Most_ThatAnySizeCouldFit_IsNeverLessThanTheFit()
    {
        var spec = WatchCases.OfTheMill(12);
        var jury = new WatchJury(spec, By);
        var sums = jury.Sums(jury.Rows);
        for (var pairs = 2; pairs <= 12; pairs++)
        {
            foreach (var rival in ChangeRival.Of(spec))
            {
                Assert.True(rival.MostFit(sums, pairs) >= rival.Share * rival.Starts(sums, pairs).Sum(s => Math.Exp(s.LogFit) / AskedFit.Of(s.After, pairs - s.After)));
            }
        }
    }

    // How many times likelier all readings are with moves of normal sizes than with none.
    private static double Ratio(double[][] rows, bool hasWheat, params (double[] Along, double Mean, double Spread)[] moves)
    {
        var (e, m, w, u) = (By.Reference * By.Reference, By.Instrument * By.Instrument, By.Swing * By.Swing, By.Wheat * By.Wheat);
        var one = hasWheat ? new[,] { { w + e, -e, w }, { -e, e + m, 0 }, { w, 0, w + u } } : new[,] { { w + e, -e }, { -e, e + m } };
        var width = one.GetLength(0);
        double[] level = hasWheat ? [1e6, 0.0625 * (e + m), 1e6] : [1e6, 0.0625 * (e + m)];
        var none = Matrix<double>.Build.Dense(rows.Length * width, rows.Length * width, (r, c) => (r / width == c / width ? one[r % width, c % width] : 0) + (r % width == c % width ? level[r % width] : 0));
        var readings = Vector<double>.Build.DenseOfEnumerable(rows.SelectMany(r => r.Select((x, c) => x - (c == 1 ? 0 : rows[0][c]))));
        var (moved, mean) = (none.Clone(), Vector<double>.Build.Dense(readings.Count));
        foreach (var (along, size, spread) in moves)
        {
            var vector = Vector<double>.Build.Dense(along);
            moved += vector.OuterProduct(vector) * (spread * spread);
            mean += vector * size;
        }

        return Math.Exp(LogDensity(readings - mean, moved) - LogDensity(readings, none));
    }

    private static double LogDensity(Vector<double> away, Matrix<double> covariance)
    {
        var cholesky = covariance.Cholesky();
        return -0.5 * (away.DotProduct(cholesky.Solve(away)) + cholesky.DeterminantLn);
    }
}
