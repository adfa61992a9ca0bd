using Evengrist.Quantities;

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

    /// <summary>The property in the words of the mill: <c>protein</c>, <c>test weight</c>.</summary>
    public static string Words(this Property what) => what switch
    {
        Property.FallingNumber => "falling number",
        Property.TestWeight => "test weight",
        Property.WetGluten => "wet gluten",
        Property.Don => "DON",
        Property.GrossWeight => "gross",
        Property.TareWeight => "tare",
        Property.ThousandKernelWeight => "thousand-kernel weight",
        Property.ForeignMaterial => "foreign material",
        Property.ShrunkenAndBroken => "shrunken and broken",
        Property.Damaged => "damaged kernels",
        Property.SoundedStock => "sounded stock",
        _ => what.ToString().ToLowerInvariant(),
    };

    /// <summary>What is wrong with a reading and what to do, in a sentence; null where nothing is.</summary>
    public static string? Fault(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Fault(reading.What, reading.Value, reading.Unit, reading.Basis);
    }

    /// <summary>What is wrong with a value, its unit and its basis and what to do, in a sentence; null where nothing is.</summary>
    public static string? Fault(Property what, decimal value, string unit, Basis basis)
    {
        var units = UnitsOf(what);
        if (!units.Contains(unit))
        {
            return $"{what} is read in {string.Join(" or ", units)}, not in \"{unit}\".";
        }

        if (what.NeedsBasis() && !basis.IsStated)
        {
            return $"{what} needs a moisture basis: say dry, 12mb, 14mb or another.";
        }

        if (!what.NeedsBasis() && basis.IsStated)
        {
            return $"{what} has no moisture basis: leave \"{basis}\" out.";
        }

        var (least, most) = Range(what, unit);
        return value < least || value > most
            ? $"{what} of {value} {unit} cannot be: it lies from {least} to {most} {unit}."
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
