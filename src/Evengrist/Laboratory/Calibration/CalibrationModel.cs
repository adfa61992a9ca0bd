namespace Evengrist.Laboratory.Calibration;

/// <summary>Calibrates spectra against a reference method. Model: docs/model/spectral-calibration.md.</summary>
public static class CalibrationModel
{
    private const int FewToValidate = 20;

    /// <summary>Calibrates.</summary>
    /// <param name="spec">Without faults.</param>
    /// <returns>The calibration; null where the spectra hold no factor at all, or, treated, are no numbers.</returns>
    /// <exception cref="ArgumentException">The spec has faults.</exception>
    public static CalibrationOutcome? Of(CalibrationSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(spec));
        }

        var set = spec.Calibrating;
        double[][] raw = [.. set.Select(s => Rows.Of(s.Spectrum))];
        double[] y = [.. set.Select(s => s.Reference)];
        var pretreatment = spec.Pretreatment.Fitted(raw);
        double[][] treated = [.. raw.Select(pretreatment.Apply)];
        if (treated.Any(row => row.Any(x => !double.IsFinite(x))))
        {
            return null;
        }

        var factors = PlsFactors.Of(treated, y, spec.MostFactors);
        if (factors.Count == 0)
        {
            return null;
        }

        var foretold = CrossValidation.Of(treated, y, CrossValidation.Segments([.. set.Select(s => s.Group)], spec.Parts), factors.Count);
        var errors = ErrorCurve.Of(foretold, y);
        var suggested = Enum.GetValues<FactorChoice>().ToDictionary(c => c, errors.Choose);
        var taken = Math.Clamp(spec.Factors ?? suggested[spec.Choice], 1, factors.Count);
        var fitted = Fitted(factors, y.Length);
        var kept = spec.Samples.Where(s => s.IsValidation).ToArray();
        var calibration = Kept(spec, pretreatment, factors, taken, treated, y, ErrorSummary.Of(y, [.. foretold.Select(f => f[taken])]).Deviation, SquaresAt(fitted, y, taken));
        if (kept.Length > 0)
        {
            var validation = ErrorSummary.Of([.. kept.Select(s => s.Reference)], [.. kept.Select(s => calibration.Read(s.Spectrum).Value)]);
            calibration = calibration with { Errors = calibration.Errors with { Prediction = kept.Length > 1 ? validation.Deviation : null, Bias = validation.Bias } };
        }

        return new CalibrationOutcome(
            calibration, [.. CurveOf(factors, errors, fitted, y, treated, kept, pretreatment)], suggested, [.. FindingsOf(calibration, set, fitted, foretold, taken)],
            [.. kept.Select(s => (s.Id, s.Reference, calibration.Read(s.Spectrum)))], [.. Remarks(spec, suggested, taken, factors, kept.Length)]);
    }

    private static SpectralCalibration Kept(CalibrationSpec spec, Pretreatment pretreatment, PlsFactors factors, int taken, double[][] treated, double[] y, double secv, double squares)
    {
        var (intercept, coefficients) = factors.Regression(taken);
        var residual = treated.Average(row => ResidualOf(factors, taken, row));
        return new SpectralCalibration(
            spec.Purpose, spec.Axis, pretreatment, intercept, coefficients, factors.Mean, [.. factors.Projections.Take(taken)], [.. factors.Loadings.Take(taken)], [.. factors.ScoreSquares.Take(taken)],
            residual, y.Length, y.Min(), y.Max(), new CalibrationErrors(Math.Sqrt(squares / (y.Length - taken - 1)), secv));
    }

    private static double ResidualOf(PlsFactors factors, int taken, double[] row)
    {
        var left = Rows.Less([row], (double[])factors.Mean)[0];
        var scores = factors.ScoresOf(row);
        for (var a = 0; a < taken; a++)
        {
            Rows.Add(left, -scores[a], (double[])factors.Loadings[a]);
        }

        return Rows.Dot(left, left);
    }

    // Of each sample the value with 0, 1, 2 … factors.
    private static double[][] Fitted(PlsFactors factors, int count)
    {
        double[][] all = [.. Enumerable.Range(0, count).Select(_ => new double[factors.Count + 1])];
        for (var i = 0; i < count; i++)
        {
            all[i][0] = factors.MeanOfProperty;
            for (var a = 1; a <= factors.Count; a++)
            {
                all[i][a] = all[i][a - 1] + (factors.Scores[a - 1][i] * factors.YLoadings[a - 1]);
            }
        }

        return all;
    }

    private static double SquaresAt(double[][] fitted, double[] y, int factors) => y.Select((v, i) => (v - fitted[i][factors]) * (v - fitted[i][factors])).Sum();

    private static IEnumerable<FactorErrors> CurveOf(PlsFactors factors, ErrorCurve errors, double[][] fitted, double[] y, double[][] treated, CalibrationSample[] kept, Pretreatment pretreatment)
    {
        var mean = (double[])factors.Mean;
        var total = Rows.Less(treated, mean).Sum(row => Rows.Dot(row, row));
        double[][] validating = [.. kept.Select(s => pretreatment.Apply([.. s.Spectrum]))];
        for (var (a, explained) = (0, 0.0); a <= factors.Count; a++)
        {
            explained += a == 0 ? 0 : factors.ScoreSquares[a - 1] * Rows.Dot((double[])factors.Loadings[a - 1], (double[])factors.Loadings[a - 1]);
            var (intercept, b) = factors.Regression(a);
            double? validation = kept.Length == 0 ? null : ErrorSummary.Of([.. kept.Select(s => s.Reference)], [.. validating.Select(row => intercept + Rows.Dot(row, b))]).Rmse;
            yield return new FactorErrors(a, Math.Sqrt(SquaresAt(fitted, y, a) / y.Length), errors.Rmse[a], errors.StandardErrors[a], validation, 100 * explained / total);
        }
    }

    private static IEnumerable<SampleFinding> FindingsOf(SpectralCalibration calibration, IReadOnlyList<CalibrationSample> set, double[][] fitted, IReadOnlyList<IReadOnlyList<double>> foretold, int taken)
    {
        foreach (var (i, sample) in set.Index())
        {
            var read = calibration.Read(sample.Spectrum);
            yield return new SampleFinding(
                sample.Id, sample.Reference, fitted[i][taken], foretold[i][taken], read.Leverage, read.GlobalH, read.Residual,
                read.GlobalH > SpectralCalibration.MostGlobalH || read.Leverage > 3.0 * taken / set.Count, read.Residual > SpectralCalibration.MostResidualTimes * calibration.MeanResidual,
                Math.Abs(sample.Reference - foretold[i][taken]) > 3 * calibration.Errors.CrossValidation);
        }
    }

    private static IEnumerable<string> Remarks(CalibrationSpec spec, Dictionary<FactorChoice, int> suggested, int taken, PlsFactors factors, int kept)
    {
        if (factors.Count < spec.MostFactors)
        {
            yield return $"The spectra hold {factors.Count} factors; {spec.MostFactors} were looked for.";
        }

        if (taken > suggested[FactorChoice.FirstMinimum] && taken > suggested[FactorChoice.OneStandardError])
        {
            yield return $"{taken} factors are more than cross-validation speaks for: {suggested[FactorChoice.OneStandardError]} by one standard error, {suggested[FactorChoice.FirstMinimum]} at the first minimum.";
        }

        if (spec.Pretreatment.Steps.Any(s => s is ScatterCorrection { Reference: null }))
        {
            yield return "The reference of the scatter correction is the mean of all samples of the set, those left out in turn too: cross-validation is a little flattered.";
        }

        if (spec.Samples.All(s => s.Group is null))
        {
            yield return "No sample has a group: where replicates, trucks or crop years repeat, cross-validation flatters. Name them.";
        }

        if (kept < FewToValidate)
        {
            yield return $"{(kept == 0 ? "No sample was" : $"{kept} samples were")} kept back to validate: {FewToValidate} or more, of another time, are asked for before it is used (EN 15948).";
        }
    }
}
