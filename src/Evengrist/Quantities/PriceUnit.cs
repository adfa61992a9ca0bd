namespace Evengrist.Quantities;

/// <summary>What a price is for. The numbers are stored.</summary>
public enum PriceUnit
{
    /// <summary>Not a unit; the default value is refused.</summary>
    None = 0,

    /// <summary>A wheat bushel of 60 lb, whatever the test weight.</summary>
    Bushel = 1,

    /// <summary>A tonne of 1000 kg.</summary>
    Tonne = 2,
}
