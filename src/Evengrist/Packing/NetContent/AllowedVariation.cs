using Evengrist.Quantities;

namespace Evengrist.Packing.NetContent;

/// <summary>
/// How far below its label a single package may weigh in the United States: the maximum allowable variation of packages labelled by weight, NIST Handbook 133, table 2-5. From memory but for three rows: check before use.
/// Model: docs/model/net-content.md.
/// </summary>
public static class AllowedVariation
{
    /// <summary>Share of the label below the first row and above the last: 10 % and 2 %.</summary>
    private const double ShareOfSmall = 0.10, ShareOfLarge = 0.02;

    // Up to and including: label in pounds and in grams; variation in pounds and in grams.
    private static readonly (double Pounds, double Grams, double VariationPounds, double VariationGrams)[] Rows =
    [
        (0.12, 54, 0.008, 3.6), (0.18, 81, 0.012, 5.4), (0.26, 117, 0.016, 7.2), (0.34, 154, 0.020, 9.0), (0.46, 208, 0.024, 10.8), (0.58, 263, 0.028, 12.7),
        (0.70, 317, 0.032, 14.5), (0.84, 381, 0.036, 16.3), (0.94, 426, 0.040, 18.1), (1.08, 489, 0.044, 19.9), (1.26, 571, 0.048, 21.7), (1.40, 635, 0.052, 23.5),
        (1.54, 698, 0.056, 25.4), (1.70, 771, 0.060, 27.2), (1.88, 852, 0.064, 29.0), (2.14, 970, 0.070, 31.7), (2.48, 1125, 0.078, 35.3), (2.76, 1251, 0.086, 39.0),
        (3.20, 1451, 0.094, 42.6), (3.90, 1769, 0.11, 49), (4.70, 2131, 0.12, 54), (5.80, 2630, 0.14, 63), (6.80, 3084, 0.15, 68), (7.90, 3583, 0.17, 77),
        (9.40, 4263, 0.19, 86), (11.70, 5307, 0.22, 99), (14.30, 6486, 0.25, 113), (17.70, 8028, 0.28, 127), (23.20, 10523, 0.31, 140), (31.60, 14333, 0.37, 167),
        (42.40, 19232, 0.44, 199), (54.40, 24675, 0.50, 226),
    ];

    private const double LeastPounds = 0.08, LeastGrams = 36;

    // A label in pounds comes through grams: a row's own bound must not be missed by the last digit.
    private const double Slack = 1e-9;

    /// <summary>The variation allowed to one package, grams.</summary>
    /// <param name="label">What the package declares.</param>
    public static double Grams(NetLabel label)
    {
        ArgumentNullException.ThrowIfNull(label);
        var (declared, least) = label.IsInPounds ? (label.Pounds, LeastPounds) : (label.Grams, LeastGrams);
        if (declared <= least + Slack)
        {
            return ShareOfSmall * label.Grams;
        }

        foreach (var row in Rows)
        {
            if (declared <= (label.IsInPounds ? row.Pounds : row.Grams) + Slack)
            {
                return label.IsInPounds ? row.VariationPounds * (double)Mass.GramsPerPound : row.VariationGrams;
            }
        }

        return ShareOfLarge * label.Grams;
    }
}
