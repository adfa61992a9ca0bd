using NodaTime;

namespace Evengrist.Bins.Storage;

/// <summary>What storage does to one layer, up to a moment. Advice: nothing here says that grain keeps.</summary>
/// <param name="Layer">The layer.</param>
/// <param name="History">Its temperature.</param>
/// <param name="Band">What that temperature means to insects.</param>
public sealed record LayerRisk(StoredLayer Layer, TemperatureHistory History, InsectBand Band)
{
    /// <summary>An advisory asks to keep the air between the kernels at or below this, as a fraction (an answer on wheat moisture on the web; weak).</summary>
    public const double HumidityLimit = 0.65;

    /// <summary>The air between its kernels; null where moisture or constants are missing.</summary>
    public EquilibriumOutcome? Air { get; private init; }

    /// <summary>How long it keeps at its present temperature, by the equation; null where the moisture is not known.</summary>
    public SafeStorageOutcome? Keeps { get; private init; }

    /// <summary>What was measured there; null where the moisture is not known.</summary>
    public MeasuredOutcome? Measured { get; private init; }

    /// <summary>How much of its time is used; null where the moisture is not known.</summary>
    public StorageLife? Life { get; private init; }

    /// <summary>CO₂ breathed out, mg per kg of dry matter and day, a trend only; null where the moisture is not known.</summary>
    public double? CarbonDioxideMg { get; private init; }

    /// <summary>Whether the air between the kernels is moister than the advisory's limit.</summary>
    public bool IsMoistAir => Air is Equilibrium { Humidity: > HumidityLimit };

    /// <summary>Judges a layer up to a moment.</summary>
    /// <param name="layer">The layer.</param>
    /// <param name="constants">Equilibrium constants of its wheat; null where there are none.</param>
    /// <param name="at">The moment; not before it came.</param>
    /// <exception cref="ArgumentException">It came after the moment.</exception>
    public static LayerRisk Of(StoredLayer layer, EmcConstants? constants, Instant at)
    {
        ArgumentNullException.ThrowIfNull(layer);
        var history = TemperatureHistory.Of(layer.Arrived, layer.DeliveryCelsius, layer.Read, at);
        var risk = new LayerRisk(layer, history, InsectBand.Of(history.Celsius));
        return layer.MoisturePercent is not { } moisture ? risk : risk with
        {
            Air = constants is null ? null : EquilibriumModel.OfMoisture(constants, history.Celsius, moisture),
            Keeps = SafeStorageModel.Of(moisture, history.Celsius),
            Measured = MeasuredStorage.Of(moisture, history.Celsius),
            Life = StorageLife.Of(moisture, history),
            CarbonDioxideMg = RespirationModel.Rate(moisture, history.Celsius, (at - layer.Arrived) / Duration.FromDays(1)),
        };
    }
}
