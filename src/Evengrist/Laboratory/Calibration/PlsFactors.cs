namespace Evengrist.Laboratory.Calibration;

/// <summary>Factors of partial least squares for one property, both sides centred, nothing scaled. Model: docs/model/spectral-calibration.md.</summary>
/// <remarks>The improved kernel form of Dayal and MacGregor (Journal of Chemometrics 11 (1997) 73, first algorithm; from memory): the spectra are never deflated, only their product with the property is.</remarks>
public sealed class PlsFactors
{
    // Below this share of what was to be explained, what is left is rounding.
    private const double Nothing = 1e-13;

    private readonly List<double[]> projections = [];
    private readonly List<double[]> loadings = [];
    private readonly List<double[]> weights = [];
    private readonly List<double[]> scores = [];
    private readonly List<double> scoreSquares = [];
    private readonly List<double> yLoadings = [];

    private PlsFactors(double[] mean, double meanOfProperty)
    {
        Mean = mean;
        MeanOfProperty = meanOfProperty;
    }

    /// <summary>Factors that were found: as many as were asked for, or as the spectra have.</summary>
    public int Count => projections.Count;

    /// <summary>Mean spectrum of the set.</summary>
    public IReadOnlyList<double> Mean { get; }

    /// <summary>Mean of the property.</summary>
    public double MeanOfProperty { get; }

    /// <summary>w of each factor, of length 1.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Weights => weights;

    /// <summary>r of each factor: score = (x − mean) · r.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Projections => projections;

    /// <summary>p of each factor: x − mean ≈ Σ score · p.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Loadings => loadings;

    /// <summary>Scores of the set, factor by factor.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Scores => scores;

    /// <summary>Sum of the squared scores of each factor.</summary>
    public IReadOnlyList<double> ScoreSquares => scoreSquares;

    /// <summary>q of each factor: property − mean ≈ Σ score · q.</summary>
    public IReadOnlyList<double> YLoadings => yLoadings;

    /// <summary>Finds factors.</summary>
    /// <param name="rows">Spectra of one length.</param>
    /// <param name="property">Of each, finite, not all alike.</param>
    /// <param name="most">Factors asked for, 1 or more.</param>
    public static PlsFactors Of(IReadOnlyList<double[]> rows, IReadOnlyList<double> property, int most)
    {
        ArgumentNullException.ThrowIfNull(rows);
        ArgumentNullException.ThrowIfNull(property);
        ArgumentOutOfRangeException.ThrowIfLessThan(most, 1);
        if (rows.Count < 2 || property.Count != rows.Count || rows.Any(r => r.Length != rows[0].Length))
        {
            throw new ArgumentException("Factors need two spectra or more of one length, each with its property.", nameof(rows));
        }

        return Of(rows, property, [.. Enumerable.Range(0, rows.Count)], most);
    }

    internal static PlsFactors Of(IReadOnlyList<double[]> rows, IReadOnlyList<double> property, IReadOnlyList<int> which, int most)
    {
        var found = new PlsFactors(Rows.Mean(rows, which), which.Average(i => property[i]));
        var mean = (double[])found.Mean;
        var left = new double[mean.Length];
        foreach (var i in which)
        {
            Rows.Add(left, property[i] - found.MeanOfProperty, rows[i]);
        }

        // Σ (y − ȳ) is 0 but for rounding; the mean is taken out all the same.
        Rows.Add(left, -which.Sum(i => property[i] - found.MeanOfProperty), mean);
        var least = Nothing * Math.Sqrt(Rows.Dot(left, left));
        while (found.Count < most && found.Next(rows, which, left, least))
        {
        }

        return found;
    }

    /// <summary>Intercept and coefficients with the first so many factors: property = intercept + Σ coefficient · channel.</summary>
    public (double Intercept, double[] Coefficients) Regression(int factors)
    {
        var b = new double[Mean.Count];
        for (var a = 0; a < factors; a++)
        {
            Rows.Add(b, yLoadings[a], projections[a]);
        }

        return (MeanOfProperty - Rows.Dot((double[])Mean, b), b);
    }

    /// <summary>Scores of a spectrum on all factors.</summary>
    public double[] ScoresOf(double[] spectrum) => [.. projections.Select(r => Rows.Dot(spectrum, r) - Rows.Dot((double[])Mean, r))];

    private bool Next(IReadOnlyList<double[]> rows, IReadOnlyList<int> which, double[] left, double least)
    {
        var length = Math.Sqrt(Rows.Dot(left, left));
        if (!(length > least))
        {
            return false;
        }

        var w = Rows.Times(1 / length, left);
        var r = (double[])w.Clone();
        for (var a = 0; a < Count; a++)
        {
            Rows.Add(r, -Rows.Dot(loadings[a], w), projections[a]);
        }

        var offset = Rows.Dot((double[])Mean, r);
        var (t, p, squares) = (new double[which.Count], new double[r.Length], 0.0);
        for (var k = 0; k < t.Length; k++)
        {
            t[k] = Rows.Dot(rows[which[k]], r) - offset;
            squares += t[k] * t[k];
            Rows.Add(p, t[k], rows[which[k]]);
        }

        if (!(squares > 0))
        {
            return false;
        }

        Rows.Add(p, -t.Sum(), (double[])Mean);
        p = Rows.Times(1 / squares, p);
        var q = Rows.Dot(left, r) / squares;
        Rows.Add(left, -squares * q, p);
        weights.Add(w);
        projections.Add(r);
        loadings.Add(p);
        scores.Add(t);
        scoreSquares.Add(squares);
        yLoadings.Add(q);
        return true;
    }
}
