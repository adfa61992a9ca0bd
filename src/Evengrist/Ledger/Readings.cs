using Evengrist.Quantities;

namespace Evengrist.Ledger;

/// <summary>What each property can be read in, and whether it needs a moisture basis.</summary>
public static class Readings
{
    /// <summary>Whether the property is a share of solids, so that a value without a moisture basis says nothing.</summary>
    public static bool NeedsBasis(this Property what) => what.Trait().NeedsBasis;

    /// <summary>The units a property may be read in; the first is the usual one.</summary>
    public static IReadOnlyList<string> UnitsOf(Property what) => what.Trait().Units;

    /// <summary>The property in the words of the mill: <c>protein</c>, <c>test weight</c>.</summary>
    public static string Words(this Property what) => what.Trait().Words;

    /// <summary>The property of a name or of its words, whatever the case; none where it is neither.</summary>
    public static Property Called(string text) =>
        Enum.GetValues<Property>().FirstOrDefault(p => p != Property.None && (p.Words().Equals(text, StringComparison.OrdinalIgnoreCase) || p.ToString().Equals(text, StringComparison.OrdinalIgnoreCase)));

    /// <summary>What is wrong with a reading and what to do, in a sentence; null where nothing is.</summary>
    public static string? Fault(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Fault(reading.What, reading.Value, reading.Unit, reading.Basis);
    }

    /// <summary>What is wrong with a value, its unit and its basis and what to do, in a sentence; null where nothing is.</summary>
    public static string? Fault(Property what, decimal value, string unit, Basis basis)
    {
        var trait = what.Trait();
        if (!trait.Units.Contains(unit))
        {
            return $"{what} is read in {string.Join(" or ", trait.Units)}, not in \"{unit}\".";
        }

        if (trait.NeedsBasis && !basis.IsStated)
        {
            return $"{what} needs a moisture basis: say dry, 12mb, 14mb or another.";
        }

        if (!trait.NeedsBasis && basis.IsStated)
        {
            return $"{what} has no moisture basis: leave \"{basis}\" out.";
        }

        var (least, most) = trait.Range(unit);
        if (value < least || value > most)
        {
            return $"{what} of {value} {unit} cannot be: it lies from {least} to {most} {unit}.";
        }

        return trait.IsCount && value != decimal.Truncate(value) ? $"{what} is a count: {value} {unit} is no whole number." : null;
    }
}
