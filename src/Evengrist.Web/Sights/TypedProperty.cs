using Evengrist.Ledger;

namespace Evengrist.Web.Sights;

/// <summary>Reads the name of a property as a form or a request gives it.</summary>
internal static class TypedProperty
{
    /// <summary>The property of exactly that name; none for a number, another case or no name at all.</summary>
    public static Property Read(string? text) => Enum.TryParse<Property>(text, out var what) && what.ToString() == text ? what : Property.None;
}
