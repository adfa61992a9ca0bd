namespace Evengrist.Laboratory.Calibration;

/// <summary>A calibration to be kept: everything that is needed to read new spectra and to say when it may not. Model: docs/model/spectral-calibration.md.</summary>
/// <param name="Purpose">What it foretells.</param>
/// <param name="Axis">The channels a spectrum must have.</param>
/// <param name="Pretreatment">With the reference spectrum stored.</param>
/// <param name="Intercept">Of the regression on the treated spectrum.</param>
/// <param name="Coefficients">One for each channel that is left after treatment.</param>
/// <param name="Mean">Mean of the treated spectra.</param>
/// <param name="Projections">r of each factor.</param>
/// <param name="Loadings">p of each factor.</param>
/// <param name="ScoreSquares">Sum of squared scores of each factor.</param>
/// <param name="MeanResidual">Mean Q of the set.</param>
/// <param name="Samples">n, in the set.</param>
/// <param name="Least">Least reference of the set.</param>
/// <param name="Most">Greatest reference of the set.</param>
/// <param name="Errors">SEC, SECV and, where samples were kept back, SEP.</param>
public sealed record SpectralCalibration(
    CalibrationPurpose Purpose, SpectralAxis Axis, Pretreatment Pretreatment, double Intercept, IReadOnlyList<double> Coefficients, IReadOnlyList<double> Mean,
    IReadOnlyList<IReadOnlyList<double>> Projections, IReadOnlyList<IReadOnlyList<double>> Loadings, IReadOnlyList<double> ScoreSquares, double MeanResidual, int Samples, double Least, double Most, CalibrationErrors Errors)
{
    /// <summary>Global H above which a sample is outside [common practice, from memory].</summary>
    public const double MostGlobalH = 3;

    /// <summary>Times the set's mean Q above which a sample is outside [common practice, from memory].</summary>
    public const double MostResidualTimes = 3;

    /// <summary>Changes of bias and slope since it was made, oldest first; the newest holds.</summary>
    public IReadOnlyList<CalibrationAdjustment> Adjustments { get; init; } = [];

    /// <summary>Factors.</summary>
    public int Factors => ScoreSquares.Count;

    /// <summary>What cannot be in a calibration that came as text, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (Axis.Faults() is { Count: > 0 } axis)
        {
            return axis;
        }

        if (Pretreatment.Faults(Axis) is { Count: > 0 } steps)
        {
            return steps;
        }

        var channels = Pretreatment.AxisAfter(Axis).Count;
        return
        [
            .. Purpose.Faults(),
            .. Pretreatment.Steps.Any(s => s is ScatterCorrection { Reference: null }) ? ["The scatter correction has no reference spectrum: a calibration keeps the one of its set."] : Array.Empty<string>(),
            .. Factors >= 1 && Projections.Count == Factors && Loadings.Count == Factors && Samples > Factors + 1 ? Array.Empty<string>() : ["Projections, loadings and score squares are of the same factors, one or more and fewer than samples less one."],
            .. Projections.Concat(Loadings).Append(Coefficients).Append(Mean).All(row => row.Count == channels) ? Array.Empty<string>() : [$"Coefficients, mean, projections and loadings have {channels} channels each, as many as treatment leaves."],
            .. Projections.Concat(Loadings).Append(Coefficients).Append(Mean).SelectMany(row => row).Append(Intercept).All(double.IsFinite) && ScoreSquares.All(s => s > 0) ? Array.Empty<string>() : ["A number of the calibration is none, or a sum of squares is not above 0."],
            .. Least <= Most && MeanResidual >= 0 && Errors is { CrossValidation: > 0 } and not { Prediction: < 0 } ? Array.Empty<string>() : ["The range of references, the mean residual or the errors of the calibration cannot be."],
            .. Adjustments.All(a => a.Slope > 0 && double.IsFinite(a.Bias) && a.By.Trim().Length > 0) ? Array.Empty<string>() : ["An adjustment has a slope above 0, a bias, and a name of who decided it."],
        ];
    }

    /// <summary>Reads a spectrum.</summary>
    /// <param name="spectrum">On <see cref="Axis"/>, every channel a finite number.</param>
    /// <exception cref="ArgumentException">It has another number of channels, or one that is no number.</exception>
    public SpectralReading Read(IReadOnlyList<double> spectrum)
    {
        ArgumentNullException.ThrowIfNull(spectrum);
        if (spectrum.Count != Axis.Count || spectrum.Any(x => !double.IsFinite(x)))
        {
            throw new ArgumentException($"A spectrum of {Axis.Count} finite channels is read; got {spectrum.Count}.", nameof(spectrum));
        }

        var treated = Pretreatment.Apply([.. spectrum]);
        var left = Rows.Less([treated], Rows.Of(Mean))[0];
        double[] scores = [.. Projections.Select(r => Rows.Dot(left, Rows.Of(r)))];
        var leverage = scores.Zip(ScoreSquares, (t, squares) => t * t / squares).Sum();
        for (var a = 0; a < scores.Length; a++)
        {
            Rows.Add(left, -scores[a], Rows.Of(Loadings[a]));
        }

        var (globalH, residual) = (leverage * (Samples - 1) / Factors, Rows.Dot(left, left));
        var raw = Intercept + Rows.Dot(treated, Rows.Of(Coefficients));
        var (bias, slope) = Adjustments is [.., var last] ? (last.Bias, last.Slope) : (0, 1);
        var value = bias + (slope * raw);
        var outside = (globalH > MostGlobalH ? OutsideCalibration.Scores : 0) | (residual > MostResidualTimes * MeanResidual ? OutsideCalibration.Residual : 0) | (value < Least || value > Most ? OutsideCalibration.Range : 0);
        var wider = Math.Sqrt((1 + (1.0 / Samples) + leverage) / (1 + ((1.0 + Factors) / Samples)));
        return new(value, Math.Abs(slope) * (Errors.Prediction ?? Errors.CrossValidation) * wider, leverage, globalH, residual, outside);
    }
}
