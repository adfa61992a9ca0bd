namespace Evengrist.Intake.Sampling;

/// <summary>The scale on which a property of loads is spread.</summary>
public enum PriorScale
{
    /// <summary>Nothing; the default value is refused.</summary>
    None = 0,

    /// <summary>Falling number: normal on the liquefaction number 6000/(FN − 50). Bad is below the limit in seconds.</summary>
    Liquefaction = 1,

    /// <summary>A toxin: lognormal in mg/kg. Bad is above the limit.</summary>
    Lognormal = 2,
}
