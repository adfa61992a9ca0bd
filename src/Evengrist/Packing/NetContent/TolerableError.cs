namespace Evengrist.Packing.NetContent;

/// <summary>
/// How far below its label a package may weigh in the European Union before it counts as inadequate: tolerable negative error, Directive 76/211/EEC, Annex I [read]; 1 to 10 kg and above from memory (OIML R 87, rules of member states): check before use.
/// Model: docs/model/net-content.md.
/// </summary>
public static class TolerableError
{
    /// <summary>Least and most the table is stated for, grams.</summary>
    public const double LeastGrams = 5, MostGrams = NetLabel.MostGrams;

    // Up to and including: grams; a share of the label, or grams.
    private static readonly (double Most, double Share, double Grams)[] Rows =
    [
        (50, 0.09, 0), (100, 0, 4.5), (200, 0.045, 0), (300, 0, 9), (500, 0.03, 0), (1000, 0, 15), (10_000, 0.015, 0), (15_000, 0, 150), (MostGrams, 0.01, 0),
    ];

    /// <summary>The error of a label, grams; shares are rounded up to a tenth of a gram [from memory].</summary>
    /// <param name="label">What the package declares, at least <see cref="LeastGrams"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">The label lies outside the table.</exception>
    public static double Grams(NetLabel label)
    {
        ArgumentNullException.ThrowIfNull(label);
        if (label.Grams is not (>= LeastGrams and <= MostGrams))
        {
            throw new ArgumentOutOfRangeException(nameof(label), label.Grams, $"The table begins at {LeastGrams} g.");
        }

        var row = Rows.First(r => label.Grams <= r.Most);
        return row.Share > 0 ? Math.Ceiling((row.Share * label.Grams * 10) - 1e-9) / 10 : row.Grams;
    }

    /// <summary>T1, below which a package is inadequate: the label less its error, grams.</summary>
    /// <param name="label">What the package declares.</param>
    public static double First(NetLabel label) => label.Grams - Grams(label);

    /// <summary>T2, below which no package with the mark e may be: the label less twice its error, grams.</summary>
    /// <param name="label">What the package declares.</param>
    public static double Second(NetLabel label) => label.Grams - (2 * Grams(label));
}
