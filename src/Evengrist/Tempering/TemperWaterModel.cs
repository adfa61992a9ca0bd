using System.Globalization;

namespace Evengrist.Tempering;

/// <summary>How much water brings wheat to its aim at first break.</summary>
/// <remarks>Balance of water and dry matter; nothing is rounded. Model: docs/model/tempering.md.</remarks>
public static class TemperWaterModel
{
    /// <summary>Water for one unit of mass of wheat: (M₂ − M₁)/(100 − M₂).</summary>
    /// <param name="fromPercent">Moisture before, per cent wet basis.</param>
    /// <param name="toPercent">Moisture after, per cent wet basis; below 100.</param>
    /// <returns>Mass of water for each mass of wheat before it; below 0 where it would have to be dried.</returns>
    public static double Share(double fromPercent, double toPercent) => (toPercent - fromPercent) / (100 - toPercent);

    /// <summary>Answers a question, or says why no water is to be given.</summary>
    public static TemperWaterOutcome Of(TemperWaterSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new NoTemperWater(faults);
        }

        // The last stage goes so far over the aim that the loss brings it down to it: b = m + e (1 − m).
        var e = spec.EvaporationPercent / 100;
        var last = spec.AimPercent + (e * (100 - spec.AimPercent));
        double[] moistures = [spec.MoisturePercent, .. spec.EarlierStages, last];
        for (var i = 1; i < moistures.Length; i++)
        {
            if (moistures[i] < moistures[i - 1])
            {
                return new NoTemperWater([Dry(spec, moistures, i)]);
            }
        }

        var (stages, mass) = (new List<TemperStage>(), 1000.0);
        for (var i = 1; i < moistures.Length; i++)
        {
            var water = mass * Share(moistures[i - 1], moistures[i]);
            stages.Add(new TemperStage(moistures[i - 1], moistures[i], water));
            mass += water;
        }

        return new TemperWater(
            stages, spec.WaterCelsius is { } celsius ? 1 / WaterDensity.KilogramsPerLitre(celsius) : 1, mass * e,
            MoistureForecast.Of(1000, spec.MoisturePercent, spec.MoistureUncertainty, mass - 1000, spec.WaterUncertaintyPercent, spec.EvaporationPercent), [.. Remarks(spec, stages)]);
    }

    private static string Dry(TemperWaterSpec spec, double[] moistures, int stage)
    {
        var (from, to, aim) = (N(moistures[stage - 1]), N(moistures[stage]), N(spec.AimPercent));
        return stage == 1
            ? $"No water: wheat of {from} % would have to be dried to reach {to} %. Raise the aim, or read the moisture again."
            : $"Stage {stage} would have to dry the wheat from {from} to {to} %. Stages rise one after another up to the aim of {aim} %.";
    }

    private static string N(double percent) => percent.ToString("0.##", CultureInfo.InvariantCulture);

    private static IEnumerable<string> Remarks(TemperWaterSpec spec, List<TemperStage> stages)
    {
        foreach (var stage in stages.Where(s => s.ToPercent - s.FromPercent > TemperWaterSpec.MostPointsInOneStage))
        {
            yield return string.Create(CultureInfo.InvariantCulture,
                $"{stage.ToPercent - stage.FromPercent:0.0} points in one stage: an intensive dampener is said to take up to {TemperWaterSpec.MostPointsInOneStage:0} (read in a trade article). Divide it into two stages.");
        }

        yield return spec.EvaporationPercent > 0
            ? "The evaporation is the one entered; it counts as known to half of itself (ours, not tuned)."
            : "No evaporation to first break is allowed for: the aim is the moisture after wetting. Enter the mill's own loss once it is known.";
        yield return spec.WaterCelsius is null ? "Litres at 1 kg to the litre; give the water's temperature for its own density." : "Litres at the density of clean water of that temperature.";
    }
}
