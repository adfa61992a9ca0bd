namespace Evengrist.Ledger;

/// <summary>What each property can be read in, and whether it needs a moisture basis.</summary>
public static class Readings
{
    /// <summary>Whether the property is a share of solids, so that a value without a moisture basis says nothing.</summary>
    public static bool NeedsBasis(this Property what) => what is Property.Protein or Property.Ash or Property.WetGluten or Property.Don;

    /// <summary>The units a property may be read in; the first is the usual one.</summary>
    public static IReadOnlyList<string> UnitsOf(Property what) => what switch
    {
        Property.Moisture or Property.Protein or Property.Ash or Property.WetGluten or Property.Dockage
            or Property.ForeignMaterial or Property.ShrunkenAndBroken or Property.Damaged => ["%"],
        Property.FallingNumber => ["s"],
        Property.TestWeight => ["kg/hL", "lb/bu", "g/0.5L"],
        Property.Don => ["mg/kg"],
        Property.Temperature => ["°C"],
        Property.GrossWeight or Property.TareWeight => ["kg"],
        Property.ThousandKernelWeight => ["g"],
        Property.SoundedStock => ["t"],
        _ => [],
    };

    /// <summary>What is wrong with a reading and what to do, in a sentence; null where nothing is.</summary>
    public static string? Fault(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        var units = UnitsOf(reading.What);
        if (!units.Contains(reading.Unit))
        {
            return $"{reading.What} is read in {string.Join(" or ", units)}, not in \"{reading.Unit}\".";
        }

        if (reading.What.NeedsBasis() && !reading.Basis.IsStated)
        {
            return $"{reading.What} needs a moisture basis: say dry, 12mb, 14mb or another.";
        }

        if (!reading.What.NeedsBasis() && reading.Basis.IsStated)
        {
            return $"{reading.What} has no moisture basis: leave \"{reading.Basis}\" out.";
        }

        var (least, most) = Range(reading.What, reading.Unit);
        return reading.Value < least || reading.Value > most
            ? $"{reading.What} of {reading.Value} {reading.Unit} cannot be: it lies from {least} to {most} {reading.Unit}."
            : null;
    }

    // What cannot be is refused; what is merely odd is the laboratory's business. Bounds are ours.
    private static (decimal Least, decimal Most) Range(Property what, string unit) => what switch
    {
        Property.Moisture => (0m, 60m),
        Property.Protein => (0m, 95m),
        Property.FallingNumber => (60m, 1000m),
        Property.TestWeight when unit == "lb/bu" => (20m, 80m),
        Property.TestWeight when unit == "g/0.5L" => (100m, 550m),
        Property.TestWeight => (20m, 100m),
        Property.Don => (0m, 1000m),
        Property.Temperature => (-60m, 200m),
        Property.GrossWeight or Property.TareWeight => (0m, 200_000m),
        Property.ThousandKernelWeight => (0m, 200m),
        Property.SoundedStock => (0m, 1_000_000m),
        _ => (0m, 100m),
    };
}
