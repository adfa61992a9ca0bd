namespace Evengrist.Intake.Deciding;

/// <summary>What a trailer may have carried, as far as it matters to wheat for flour.</summary>
public enum CargoKind
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Wheat.</summary>
    Wheat = 1,

    /// <summary>Another cereal.</summary>
    OtherCereal = 2,

    /// <summary>Soybeans or soy meal: an allergen.</summary>
    Soy = 3,

    /// <summary>Peanuts, mustard, sesame, lupin: allergens.</summary>
    OtherAllergen = 4,

    /// <summary>Fertiliser, salt, lime.</summary>
    Fertiliser = 5,

    /// <summary>Sand, gravel, soil.</summary>
    Stone = 6,

    /// <summary>Seed dressed with pesticide.</summary>
    TreatedSeed = 7,

    /// <summary>Pesticides, chemicals, fuel.</summary>
    Chemicals = 8,

    /// <summary>Meat meal, carcasses, manure, sewage sludge.</summary>
    AnimalMatter = 9,

    /// <summary>Refuse, glass, scrap.</summary>
    Refuse = 10,
}
