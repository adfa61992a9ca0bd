using MathNet.Numerics.Distributions;
using MathNet.Numerics.LinearAlgebra;

namespace Evengrist.Laboratory.Rings;

/// <summary>Flour told apart from laboratory: result = sample + laboratory + chance, by least squares. Model: docs/model/ring-tests.md.</summary>
public static class RingModel
{
    /// <summary>Every laboratory's bias. What samples link can be compared; what they do not cannot.</summary>
    /// <param name="results">One or more.</param>
    /// <param name="reference">The laboratory whose bias is 0; null for the mean of all that are linked.</param>
    public static IReadOnlyList<LaboratoryBias> Biases(IReadOnlyList<RingResult> results, string? reference)
    {
        ArgumentNullException.ThrowIfNull(results);
        return [.. Linked(results).SelectMany(group => Of(group, reference)).OrderBy(b => b.Laboratory, StringComparer.Ordinal)];
    }

    /// <summary>Results in groups that are linked by a sample or a laboratory in common.</summary>
    private static IEnumerable<RingResult[]> Linked(IReadOnlyList<RingResult> results)
    {
        List<RingResult> left = [.. results];
        while (left.Count > 0)
        {
            List<RingResult> group = [left[0]];
            left.RemoveAt(0);
            for (var i = 0; i < group.Count; i++)
            {
                var next = left.Where(r => r.Laboratory == group[i].Laboratory || r.Sample == group[i].Sample).ToArray();
                group.AddRange(next);
                left.RemoveAll(next.Contains);
            }

            yield return [.. group];
        }
    }

    private static IEnumerable<LaboratoryBias> Of(RingResult[] results, string? reference)
    {
        string[] laboratories = [.. results.Select(r => r.Laboratory).Distinct()], samples = [.. results.Select(r => r.Sample).Distinct()];
        if (laboratories.Length == 1)
        {
            return [new(laboratories[0], null, null, null, "nobody else read the same samples")];
        }

        var (l, s) = (laboratories.Length, samples.Length);
        var design = Matrix<double>.Build.Dense(results.Length, l + s);
        foreach (var (row, result) in results.Index())
        {
            (design[row, Array.IndexOf(laboratories, result.Laboratory)], design[row, l + Array.IndexOf(samples, result.Sample)]) = (1, 1);
        }

        // One condition fixes where 0 is: the reference laboratory, or the mean of all.
        var fixedAt = Array.IndexOf(laboratories, reference);
        var system = Matrix<double>.Build.Dense(l + s + 1, l + s + 1);
        system.SetSubMatrix(0, 0, design.TransposeThisAndMultiply(design));
        for (var i = 0; i < l; i++)
        {
            system[i, l + s] = system[l + s, i] = fixedAt < 0 || i == fixedAt ? 1 : 0;
        }

        var values = Vector<double>.Build.Dense([.. results.Select(r => r.Value)]);
        var inverse = system.Inverse();
        var found = inverse * Vector<double>.Build.Dense([.. design.TransposeThisAndMultiply(values), 0]);
        var freedom = results.Length - (l + s - 1);
        var left = (values - (design * found.SubVector(0, l + s))).PointwisePower(2).Sum();
        double? deviation = freedom > 0 ? Math.Sqrt(left / freedom) : null;
        var against = fixedAt >= 0 ? reference! : $"the mean of {l} laboratories linked by samples";
        return laboratories.Select((name, i) => One(name, i == fixedAt, found[i], deviation * Math.Sqrt(Math.Max(0, inverse[i, i])), freedom, against));
    }

    private static LaboratoryBias One(string name, bool isReference, double bias, double? deviation, int freedom, string against) => isReference ? new(name, 0, 0, false, "it is the reference")
        : new(name, bias, deviation, deviation is { } d ? Math.Abs(bias) > StudentT.InvCDF(0, 1, freedom, 0.975) * d : null, against);
}
