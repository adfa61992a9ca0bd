using Evengrist.Bins.Storage;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights.Storage;

/// <summary>Figures of stored wheat, each with what it rests on.</summary>
public static class StorageFigures
{
    private static readonly Because OfLoads = new("Mean of the readings on the loads it came on, by mass; taken as unchanged since.", [], "the readings on the trucks");

    /// <summary>Moisture of a layer; null where not read.</summary>
    public static Figure? Moisture(LayerRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return risk.Layer.MoisturePercent is not { } moisture ? null : Figure.Reckoned("Moisture of the layer", (decimal)moisture, "%", 1, OfLoads with
        {
            Inputs =
            [
                Figure.Reckoned("Moistest load", (decimal)risk.Layer.MoistestPercent!.Value, "%", 1, new Because("The greatest reading among its loads.", [], "the readings on the trucks")),
                Figure.Reckoned("Share of the mass with a reading", (decimal)(100 * risk.Layer.ShareRead), "%", 0, new Because("Mass from loads with a moisture reading, over all.", [], "the readings on the trucks")),
            ],
        });
    }

    /// <summary>Temperature of a layer now.</summary>
    public static Figure Celsius(LayerRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return Figure.Reckoned("Temperature of the layer", (decimal)risk.History.Celsius, "°C", 1, new Because(
            risk.History.Origin switch
            {
                TemperatureOrigin.Cable => "The newest reading of the cable point nearest to it by height; of points equally near the warmest.",
                TemperatureOrigin.Delivery => "Read on the trucks and held since.",
                _ => "Not read: assumed.",
            } + (risk.History.Assumption.Length > 0 ? $" {char.ToUpperInvariant(risk.History.Assumption[0])}{risk.History.Assumption[1..]}." : ""), [], "the readings on the cables; docs/model/safe-storage.md"));
    }

    /// <summary>Days it keeps at its present temperature, to plan by; null where the equation does not reach.</summary>
    public static Figure? AlarmDays(LayerRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return risk.Keeps is not StorageDays keeps ? null : Figure.Reckoned("Days it keeps at this moisture and temperature, to plan by", (decimal)keeps.AlarmDays, "d", 0, new Because(
            "Days of the equation × 0.6, until about one kernel in ten no longer germinates.",
            [
                Figure.Reckoned("Days by the equation", (decimal)keeps.Days, "d", 1, new Because("log t = 6.234 − 0.2118 M − 0.0527 T to 19 %, 4.129 − 0.0997 M − 0.0576 T above.", [], SafeStorageModel.Source)),
                .. risk.Measured is MeasuredDays measured ? [Figure.Reckoned("Days measured there", (decimal)measured.Days, "d", 1, new Because("Between the points that were measured.", [], MeasuredStorage.Source))] : Array.Empty<Figure>(),
                .. risk.Measured is MeasuredAtLeast least ? [Figure.Reckoned("Measured there: more than", (decimal)least.Days, "d", 0, new Because("The trial ended before anything fell.", [], MeasuredStorage.Source))] : Array.Empty<Figure>(),
            ],
            SafeStorageModel.Source));
    }

    /// <summary>Life used; null where the moisture is not known.</summary>
    public static Figure? Life(LayerRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return risk.Life is not { } life ? null : Figure.Reckoned(life.IsAtMost ? "Life used, at most" : life.DaysBeyond > 0 ? "Life used, more than" : "Life used", (decimal)life.Used, "", 2, new Because(
            "Σ days ÷ days it keeps to plan by, over its temperatures since it came; alarm at 0.5, act at 0.8 (ours)."
                + (life.IsAtMost ? " Drier than 12 %, where the equation ends: counted as at 12 %, so it raises no alarm." : "")
                + (life.DaysBeyond > 0 ? " Warmer or wetter than the equation reaches on some days: counted at its edge, so more is used." : "")
                + (life.DaysColder > 0 ? " Colder than 5 °C on some days: counted as at 5 °C, a little too much." : ""),
            [
                Figure.Reckoned("Days in store", Days(risk), "d", 0, new Because("From the mean arrival of its loads to the moment looked at.", [], "the ledger")),
                .. life.DaysToAct is { } left ? [Figure.Reckoned("Days until 0.8 if it stays as it is", (decimal)left, "d", 0, new Because("What is left to 0.8 × days it keeps to plan by.", [], SafeStorageModel.Source))] : Array.Empty<Figure>(),
            ],
            SafeStorageModel.Source));
    }

    /// <summary>Humidity between the kernels; null where it cannot be reckoned.</summary>
    public static Figure? Humidity(LayerRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return risk.Air is not Equilibrium air ? null : Figure.Reckoned("Humidity of the air between the kernels", (decimal)(100 * air.Humidity), "%", 0, new Because(
            $"{char.ToUpperInvariant(air.Constants.Form.Words()[0])}{air.Constants.Form.Words()[1..]} equation for {air.Constants.Wheat} wheat at its moisture and temperature. {string.Join(" ", air.Notes)}", [], "docs/model/equilibrium-moisture.md"));
    }

    /// <summary>CO₂ breathed out; a trend only. Null where the moisture is not known.</summary>
    public static Figure? CarbonDioxide(LayerRisk risk)
    {
        ArgumentNullException.ThrowIfNull(risk);
        return risk.CarbonDioxideMg is not { } mg ? null : Figure.Reckoned("CO₂ breathed out by each kg of dry matter in a day", (decimal)mg, "mg", 1, new Because(
            "log R = −4.054 + 0.0406 T − 0.0165 d + 0.0001 d² + 0.2389 M.",
            [
                Figure.Reckoned("Dry matter lost in 30 days at that rate", (decimal)RespirationModel.LossPercent(30 * mg), "%", 4, new Because("1 kg of dry matter gives 1.466 kg CO₂ (glucose).", [], "derived")),
                Figure.Reckoned("Heat from that, as warming without any loss", (decimal)(RespirationModel.Of(RespirationModel.LossPercent(30 * mg)).HeatKilojoules / RespirationModel.GrainHeat), "K", 2, new Because("15.7 MJ for each kg of dry matter, 1.8 kJ/(kg K).", [], "derived; heat of wheat from memory")),
            ],
            RespirationModel.Mark));
    }

    private static decimal Days(LayerRisk risk) => (decimal)((risk.History.Points[^1].At - risk.History.Points[0].At) / Duration.FromDays(1));
}
