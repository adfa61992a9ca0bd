namespace Evengrist.Intake;

/// <summary>What a step of a scale does. The names are stored.</summary>
public enum ScaleEffect
{
    /// <summary>Not an effect; the default value is refused.</summary>
    None = 0,

    /// <summary>Adds money to the price of each bushel or tonne; effects of several scales add up.</summary>
    AddsToPrice = 1,

    /// <summary>Adds per cent to the settled mass (−1.4 takes 1.4 %); effects of several scales multiply.</summary>
    MultipliesMass = 2,
}
