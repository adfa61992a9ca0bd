namespace Evengrist.Intake.Deciding;

/// <summary>What each sort of earlier load demands of a trailer before it may bring wheat: common practice set down by us; the site's food-safety plan prevails.</summary>
public static class CleanOutDuty
{
    /// <summary>What must have been done since such a load.</summary>
    /// <exception cref="ArgumentOutOfRangeException">Not a sort of load.</exception>
    public static CleanOut After(CargoKind cargo) => cargo switch
    {
        CargoKind.Wheat => CleanOut.Nothing,
        CargoKind.OtherCereal or CargoKind.Stone => CleanOut.Swept,
        CargoKind.Soy or CargoKind.OtherAllergen or CargoKind.Fertiliser => CleanOut.Washed,
        CargoKind.TreatedSeed or CargoKind.Chemicals or CargoKind.Refuse => CleanOut.WashedAndInspected,
        CargoKind.AnimalMatter => CleanOut.Never,
        _ => throw new ArgumentOutOfRangeException(nameof(cargo), cargo, "Not a sort of load."),
    };

    /// <summary>A sort of load in words.</summary>
    public static string Words(this CargoKind cargo) => cargo switch
    {
        CargoKind.OtherCereal => "another cereal",
        CargoKind.Soy => "soy",
        CargoKind.OtherAllergen => "peanuts, mustard, sesame or lupin",
        CargoKind.Fertiliser => "fertiliser, salt or lime",
        CargoKind.Stone => "sand, gravel or soil",
        CargoKind.TreatedSeed => "treated seed",
        CargoKind.Chemicals => "chemicals or fuel",
        CargoKind.AnimalMatter => "meat meal, carcasses or manure",
        CargoKind.Refuse => "refuse, glass or scrap",
        _ => cargo.ToString().ToLowerInvariant(),
    };

    /// <summary>A cleaning in words.</summary>
    public static string Words(this CleanOut cleaning) => cleaning switch
    {
        CleanOut.Nothing => "not cleaned",
        CleanOut.Swept => "swept out",
        CleanOut.Washed => "washed and dried",
        CleanOut.WashedAndInspected => "washed, dried, inspected and signed",
        _ => "no cleaning suffices",
    };
}
