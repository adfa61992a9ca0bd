namespace Evengrist.Bins.Storage;

/// <summary>A question to the equilibrium equations: what moisture an air gives, or what air a moisture gives. One of the two is given.</summary>
/// <param name="Wheat">The wheat, as the constants name it.</param>
/// <param name="Form">The equation.</param>
/// <param name="Celsius">Temperature of grain and air, °C; −20 to 60.</param>
public sealed record EquilibriumSpec(string Wheat, EmcForm Form, double Celsius)
{
    /// <summary>Relative humidity of the air as a fraction, above 0 and below 1; null where the moisture is given.</summary>
    public double? Humidity { get; init; }

    /// <summary>Moisture of the grain, per cent, wet basis, above 0 and below 60; null where the humidity is given.</summary>
    public double? MoisturePercent { get; init; }

    /// <summary>What is wrong with the question, in a sentence; null where nothing is.</summary>
    public string? Fault() =>
        (Humidity is null) == (MoisturePercent is null) ? "Give either the humidity of the air or the moisture of the grain, and not both."
        : Celsius is not (>= -20 and <= 60) ? "The temperature lies from −20 to 60 °C."
        : Humidity is { } h && h is not (> 0 and < 1) ? "The humidity lies above 0 and below 1, as a fraction."
        : MoisturePercent is { } m && m is not (> 0 and < 60) ? "The moisture lies above 0 and below 60 %, wet basis."
        : null;
}
