using System.Globalization;
using Evengrist.Bins.Storage;

namespace Evengrist.Web.Sights.Storage;

/// <summary>An air outside that a person asks about for a bin, as typed.</summary>
/// <param name="Celsius">Dry bulb, °C.</param>
/// <param name="Humidity">Relative humidity, per cent.</param>
/// <param name="Airflow">m³/min for each tonne.</param>
public sealed record AirAsk(string? Celsius, string? Humidity, string? Airflow)
{
    /// <summary>The usual airflow, 0.1 cfm/bu.</summary>
    public const string UsualAirflow = "0.104";

    /// <summary>Whether anything was asked.</summary>
    public bool IsAsked => !string.IsNullOrWhiteSpace(Celsius) || !string.IsNullOrWhiteSpace(Humidity);

    /// <summary>What the air would do to a layer.</summary>
    /// <param name="layer">The layer, with a moisture.</param>
    /// <param name="constants">Equilibrium constants of its wheat.</param>
    /// <param name="depthMetres">Depth of the grain; null where no height is known.</param>
    public AerationOutcome Of(LayerRisk layer, EmcConstants constants, double? depthMetres)
    {
        ArgumentNullException.ThrowIfNull(layer);
        return Number(Celsius) is { } celsius && Number(Humidity) is { } humidity && Number(Airflow ?? UsualAirflow) is { } airflow
            ? AerationModel.Of(new AerationSpec(constants, layer.History.Celsius, layer.Layer.MoisturePercent!.Value, airflow) { DepthMetres = depthMetres }, new OutsideAir(celsius, humidity / 100))
            : new NoAeration("Give the temperature of the air in °C, its humidity in per cent and the airflow as numbers, such as 12, 70 and 0.104.");
    }

    private static double? Number(string? text) =>
        double.TryParse(text, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out var number) ? number : null;
}
