namespace Evengrist.Laboratory.Calibration;

/// <summary>Each sample foretold by factors of the samples that do not share its segment.</summary>
public static class CrossValidation
{
    /// <summary>Segments of samples: those of one group (a truck, replicates of one sample, a crop year) always fall into one.</summary>
    /// <param name="groups">Group of each sample; a sample with null is a group of its own.</param>
    /// <param name="parts">Into how many segments groups are dealt in turn; null leaves one group out at a time.</param>
    /// <returns>The segment of each sample, from 0.</returns>
    public static int[] Segments(IReadOnlyList<string?> groups, int? parts)
    {
        ArgumentNullException.ThrowIfNull(groups);
        var numbers = new Dictionary<string, int>(StringComparer.Ordinal);
        var next = 0;
        var segments = new int[groups.Count];
        for (var i = 0; i < segments.Length; i++)
        {
            if (groups[i] is not { } name)
            {
                segments[i] = next++;
            }
            else if (numbers.TryGetValue(name, out var known))
            {
                segments[i] = known;
            }
            else
            {
                numbers[name] = segments[i] = next++;
            }
        }

        return parts is { } p ? [.. segments.Select(s => s % p)] : segments;
    }

    /// <summary>Foretells every sample.</summary>
    /// <param name="spectra">Treated spectra of one length.</param>
    /// <param name="property">Of each.</param>
    /// <param name="segments">Segment of each; two or more.</param>
    /// <param name="most">Factors up to which is foretold.</param>
    /// <returns>Of each sample the value with 0 (the mean of the others), 1, 2 … factors.</returns>
    public static IReadOnlyList<IReadOnlyList<double>> Of(IReadOnlyList<double[]> spectra, IReadOnlyList<double> property, IReadOnlyList<int> segments, int most)
    {
        ArgumentNullException.ThrowIfNull(spectra);
        ArgumentNullException.ThrowIfNull(property);
        ArgumentNullException.ThrowIfNull(segments);
        if (segments.Distinct().Count() < 2 || segments.Count != spectra.Count || property.Count != spectra.Count)
        {
            throw new ArgumentException("Every sample has a segment and a property, and there are two segments or more.", nameof(segments));
        }

        int[] all = [.. Enumerable.Range(0, spectra.Count)];
        var centred = Rows.Less(spectra, Rows.Mean(spectra, all));
        var turned = IsTurningWorthwhile(all.Length, centred[0].Length, segments.Distinct().Count(), most) ? Rows.Turned(centred) : centred;
        var foretold = new double[spectra.Count][];
        foreach (var segment in segments.Distinct())
        {
            var factors = PlsFactors.Of(turned, property, [.. all.Where(i => segments[i] != segment)], most);
            foreach (var i in all.Where(i => segments[i] == segment))
            {
                foretold[i] = Foretold(factors, turned[i], most);
            }
        }

        return foretold;
    }

    // Turning costs 2n²p once and saves 4n(p − n) for each factor of each segment.
    private static bool IsTurningWorthwhile(double samples, double channels, double segments, double factors) => 2 * segments * factors * (channels - samples) > samples * channels;

    // Where a part has fewer factors than asked for, further ones would change nothing.
    private static double[] Foretold(PlsFactors factors, double[] spectrum, int most)
    {
        var scores = factors.ScoresOf(spectrum);
        var values = new double[most + 1];
        values[0] = factors.MeanOfProperty;
        for (var a = 1; a <= most; a++)
        {
            values[a] = values[a - 1] + (a <= scores.Length ? scores[a - 1] * factors.YLoadings[a - 1] : 0);
        }

        return values;
    }
}
