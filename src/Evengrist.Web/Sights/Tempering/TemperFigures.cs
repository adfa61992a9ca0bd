using Evengrist.Quantities;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>Figures of tempering, each with what it rests on and where that comes from.</summary>
public static class TemperFigures
{
    private const string Balance = "mass balance of water, by definition";
    private static readonly Because OfLedger = new("Walked back from what lies there through the cleaner to trucks and water.", [], "the ledger");
    private static readonly Because OfLoads = new("Mean of the readings on the loads it came on, by mass; taken as unchanged since; the mean over the three ways in which the wheat bins may have emptied. ± from the readings, their errors taken as shared by all loads, and from how far the three ways differ (ours).", [], "the readings on the trucks");

    /// <summary>A duration in hours, one decimal.</summary>
    public static string Hours(this Duration duration) => duration.TotalHours.ToString("0.0", System.Globalization.CultureInfo.InvariantCulture) + " h";

    /// <summary>Moisture before water; null where not read.</summary>
    public static Figure? Before(TemperContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return content.MoisturePercent is not { } moisture ? null : Figure.Reckoned("Moisture before water", (decimal)moisture, "% wet basis", 2, OfLoads with
        {
            Inputs = [Figure.Reckoned("Share of the wheat with a reading", (decimal)(100 * content.ShareRead), "%", 0, OfLedger)],
        }) with
        { StandardUncertainty = (decimal?)content.MoistureUncertainty };
    }

    /// <summary>Moisture to expect at first break; null where it cannot be said.</summary>
    public static Figure? AtFirstBreak(TemperPart part)
    {
        ArgumentNullException.ThrowIfNull(part);
        var content = part.Content;
        return part.AtFirstBreak is not { } forecast ? null : Forecast(forecast, part.EvaporationPercent,
            [Before(content)!, Figure.Reckoned("Wheat", (decimal)content.WheatTonnes, "t", 1, OfLedger), Figure.Reckoned("Water", (decimal)content.WaterTonnes, "t", 2, OfLedger)]);
    }

    /// <summary>The forecast of a worksheet.</summary>
    public static Figure Forecast(MoistureForecast forecast, double evaporationPercent, IReadOnlyList<Figure> inputs)
    {
        ArgumentNullException.ThrowIfNull(forecast);
        return Figure.Reckoned("Moisture to expect at first break", (decimal)forecast.Percent, "% wet basis", 2, new Because(
            "b = (wheat · m + water)/(wheat + water), less the evaporation e: (b − e)/(1 − e). ± from the moisture before water, the water (2 % of it, ours) and the evaporation (half of it, ours); not tuned to this mill.",
            [.. inputs, Figure.Seen("Evaporation allowed for, of the tempered mass", (decimal)evaporationPercent, "%")], Balance)) with
        { StandardUncertainty = (decimal)forecast.StandardUncertainty };
    }

    /// <summary>Water seen in the ledger.</summary>
    public static Figure Seen(TemperContent content)
    {
        ArgumentNullException.ThrowIfNull(content);
        return Figure.Reckoned("Water let in, by the ledger", 1000 * (decimal)content.WaterTonnes, "L", 0, OfLedger with { Formula = OfLedger.Formula + " Litres at 1 kg to the litre." });
    }

    /// <summary>Water the balance asks, in litres or litres an hour.</summary>
    public static Figure Asked(double litres, string unit, TemperPart part) => Figure.Reckoned("Water by balance", (decimal)litres, unit, 0, new Because(
        "W = Q (M₂ − M₁)/(100 − M₂), M₂ raised so that the evaporation brings it down to the aim. Litres at 1 kg to the litre.",
        [Before(part.Content)!, Figure.Reckoned("Aim at first break", (decimal)part.Advice!.Percent, "% wet basis", 2, new Because(string.Join(" ", part.Advice.Reasons), [], part.Advice.Aim.Source)), Figure.Seen("Evaporation allowed for", (decimal)part.EvaporationPercent, "%")], "a laboratory mill's manual, conditioning the wheat, 02/2017, p. 33 (read)"));

    /// <summary>The rest wanted, by the longer law, with both.</summary>
    public static Figure Rest(RestCorrection rest, string from)
    {
        ArgumentNullException.ThrowIfNull(rest);
        var carried = new Because("t(T) = t(T₀) · D(T₀)/D(T).", [Figure.Reckoned("Rest at the temperature it holds at", (decimal)rest.Hours, "h", 1, new Because($"{from}, at {rest.AtCelsius:0.#} °C.", [], from))], "");
        return Figure.Reckoned("Rest wanted", (decimal)rest.LongerHours, "h", 1, new Because(
            $"The longer of two diffusion laws at {rest.Celsius:0.#} °C; they differ by {rest.DisagreementHours:0.0} h here. {string.Join(" ", rest.Remarks)}",
            [
                Figure.Reckoned("By the soaking law", (decimal)rest.SoakingHours, "h", 1, carried with { Source = DiffusionLaw.Soaking.Source }),
                Figure.Reckoned("By the drying law", (decimal)rest.DryingHours, "h", 1, carried with { Source = DiffusionLaw.Drying.Source }),
            ], "derived from both laws; neither tuned to this mill"));
    }
}
