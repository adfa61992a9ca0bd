namespace Evengrist.Bins.Shape;

/// <summary>The pack factor of a bin from weighing it out: weighed mass over sounded volume × loose density, several by their weights. Model: docs/model/bin-shape.md.</summary>
public static class PackFactorModel
{
    /// <summary>Calibrates.</summary>
    /// <remarks>fᵢ = mᵢ/(ρᵢΔVᵢ); weights 1/uᵢ²; u = 1/√Σ(1/uᵢ²), widened by √(χ²/(n−1)) where the weigh-outs scatter more than that. Weighted mean: GUM practice; the widening is Birge's ratio [memory].</remarks>
    /// <param name="shape">The bin.</param>
    /// <param name="weighOuts">At least one.</param>
    public static PackFactorOutcome Of(BinShape shape, IReadOnlyList<WeighOut> weighOuts)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(weighOuts);
        var reasons = new List<string>();
        var found = weighOuts.Select(w => One(shape, w, reasons)).OfType<(string Code, double Factor, double U)>().ToArray();
        if (reasons.Count > 0 || found.Length == 0)
        {
            return new PackFactorNotFound(reasons.Count > 0 ? reasons : ["There is no weigh-out: sound the bin, draw over a scale, and sound it again."]);
        }

        var sum = found.Sum(f => 1 / (f.U * f.U));
        var mean = found.Sum(f => f.Factor / (f.U * f.U)) / sum;
        var chiSquare = found.Sum(f => Math.Pow((f.Factor - mean) / f.U, 2));
        var scatter = found.Length > 1 ? Math.Max(1, Math.Sqrt(chiSquare / (found.Length - 1))) : 1;
        var words = $"calibrated by {(found.Length == 1 ? "one weigh-out" : $"{found.Length} weigh-outs")}: {string.Join(", ", found.Select(f => f.Code))}";
        return new PackFactorFound(new PackFactor(mean, scatter / Math.Sqrt(sum), words) { IsCalibrated = true }, [.. found.Select(f => new WeighedFactor(f.Code, f.Factor, f.U, 1 / (f.U * f.U) / sum))], chiSquare);
    }

    private static (string, double, double)? One(BinShape shape, WeighOut weighed, List<string> reasons)
    {
        var one = new PackFactor(1, 0, "none");
        var (before, after) = (SoundingModel.Of(shape, weighed.Before, weighed.Density, one), SoundingModel.Of(shape, weighed.After, weighed.Density, one));
        foreach (var (when, not) in new[] { ("before", before as NotSounded), ("after", after as NotSounded) })
        {
            reasons.AddRange((not?.Reasons ?? []).Select(r => $"{weighed.Code}, sounding {when}: {r}"));
        }

        if (before is not Sounded full || after is not Sounded less)
        {
            return null;
        }

        var drawn = full.CubicMetres - less.CubicMetres;
        if (!(drawn > 0 && weighed.WeighedTonnes > 0 && weighed.WeighedUncertainty >= 0))
        {
            reasons.Add($"{weighed.Code}: the bin must stand lower after than before, and the weighed mass must be above zero.");
            return null;
        }

        var factor = 1000 * weighed.WeighedTonnes / (weighed.Density.KilogramsPerCubicMetre * drawn);
        var relative = Math.Sqrt(Math.Pow(weighed.WeighedUncertainty / weighed.WeighedTonnes, 2) + Math.Pow(weighed.Density.StandardUncertainty / weighed.Density.KilogramsPerCubicMetre, 2)
            + ((full.VolumeUncertainty * full.VolumeUncertainty) + (less.VolumeUncertainty * less.VolumeUncertainty)) / (drawn * drawn));
        if (factor is < 0.8 or > 1.3 || relative <= 0)
        {
            reasons.Add(FormattableString.Invariant($"{weighed.Code}: a factor of {factor:0.000} with uncertainty {factor * relative:0.000} cannot be (0.8 to 1.3, above 0). Look at the tape, the surface and the scale again."));
            return null;
        }

        return (weighed.Code, factor, factor * relative);
    }
}
