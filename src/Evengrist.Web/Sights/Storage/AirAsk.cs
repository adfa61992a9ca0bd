using Evengrist.Bins.Storage;
using Evengrist.Web.Sights.Bins;

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
        var faults = new List<string>();
        var celsius = TypedNumber.Read("The temperature of the air, in °C,", Celsius, faults, -20, 50, demanded: true);
        var humidity = TypedNumber.Read("Its humidity, in per cent,", Humidity, faults, 1, 99, demanded: true);
        var airflow = TypedNumber.Read("The airflow, in m³/min for each tonne,", string.IsNullOrWhiteSpace(Airflow) ? UsualAirflow : Airflow, faults, 0.001, 10);
        return faults.Count == 0
            ? AerationModel.Of(new AerationSpec(constants, layer.History.Celsius, layer.Layer.MoisturePercent!.Value, airflow!.Value) { DepthMetres = depthMetres }, new OutsideAir(celsius!.Value, humidity!.Value / 100))
            : new NoAeration(string.Join(" ", faults) + " Give them as numbers, such as 12, 70 and 0.104.");
    }
}
