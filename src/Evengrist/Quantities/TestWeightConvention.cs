namespace Evengrist.Quantities;

/// <summary>How a test weight was read. Instruments pack differently, so each has its own equation to kg/hL. The numbers are stored.</summary>
public enum TestWeightConvention
{
    /// <summary>Not a convention; the default value is refused.</summary>
    None = 0,

    /// <summary>Read in kg/hL.</summary>
    KilogramsPerHectolitre = 1,

    /// <summary>Pounds per Winchester bushel, US instrument, all wheat but durum.</summary>
    UsWheat = 2,

    /// <summary>Pounds per Winchester bushel, US instrument, durum.</summary>
    UsDurum = 3,

    /// <summary>Grams in half a litre, Canadian instrument, all wheat but amber durum.</summary>
    CanadianWheat = 4,

    /// <summary>Grams in half a litre, Canadian instrument, amber durum.</summary>
    CanadianDurum = 5,
}
