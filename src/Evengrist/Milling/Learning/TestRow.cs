using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Milling.Learning;

/// <summary>A measured figure and what the model has for it.</summary>
internal sealed record TestRow(string Test, string What, double Measured, Figure Figure, double Sigma);

/// <summary>The rows of a test.</summary>
internal static class TestRows
{
    /// <summary>Every figure of a test at given values of the keys.</summary>
    public static IEnumerable<TestRow> Of(MillTest test, IReadOnlyList<TuneKey> keys, Vector<double> values, TestErrors errors)
    {
        var model = MillFigures.Of(test.Sheet, test.Wheat, keys, values, errors, test.Sieves);
        foreach (var stream in test.Streams)
        {
            yield return Row($"{stream.Product} yield", stream.YieldPercent, model.Yield([stream.Product]), Both(errors.YieldPoints, errors.YieldShare * stream.YieldPercent));
            if (stream.AshPercentDry is { } ash)
            {
                yield return Row($"{stream.Product} ash", ash, model.Ash([stream.Product]), errors.AshPoints);
            }

            if (stream.ProteinPercentDry is { } protein)
            {
                yield return Row($"{stream.Product} protein", protein, model.Protein([stream.Product]), errors.ProteinPoints);
            }
        }

        foreach (var release in test.Releases)
        {
            yield return Row($"{release.Passage} release", release.ReleasePercent, model.Release(release.Passage)!, errors.ReleasePoints);
        }

        foreach (var sieve in test.Sieves)
        {
            yield return Row($"{sieve.Passage} through {sieve.ApertureMicrometres:0} µm", sieve.ThroughPercent, model.Through(sieve.Passage, sieve.ApertureMicrometres), errors.ReleasePoints);
        }

        yield return Row("wheat ash", test.Wheat.AshPercentDry, model.WholeWheat(TuneKind.Ash), errors.WheatAshPoints);
        yield return Row("wheat protein", test.Wheat.ProteinPercentDry, model.WholeWheat(TuneKind.Protein), errors.WheatProteinPoints);

        TestRow Row(string what, double measured, Figure figure, double sigma) => new(test.Name, what, measured, figure, Both(sigma, figure.ModelError));
    }

    private static double Both(double one, double other) => Math.Sqrt((one * one) + (other * other));
}
