namespace Evengrist.Quantities;

/// <summary>In which units numbers are shown and printed. A choice of display: it changes no stored value.</summary>
public enum UnitSystem
{
    /// <summary>Kilograms, tonnes, kg/hL, °C.</summary>
    Si = 0,

    /// <summary>Pounds, bushels of 60 lb, hundredweights of 100 lb, lb/bu, °F.</summary>
    UsCustomary = 1,
}
