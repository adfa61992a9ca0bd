namespace Evengrist.Quantities;

/// <summary>What a share of solids is counted in.</summary>
public enum ShareUnit
{
    /// <summary>Not a unit; the default value is refused.</summary>
    None = 0,

    /// <summary>Per cent by mass: protein, ash, gluten.</summary>
    Percent = 1,

    /// <summary>Milligrams in a kilogram, the same as ppm by mass: toxins, residues.</summary>
    MilligramsPerKilogram = 2,
}
