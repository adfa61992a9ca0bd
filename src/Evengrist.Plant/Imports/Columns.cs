using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>Text: a code, a name, a choice of words. No unit.</summary>
public sealed record TextColumn(string Name, bool Required, string Meaning) : Column(Name, Required, Meaning)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Headings => [Name];

    /// <inheritdoc/>
    public override bool IsNumeric => false;

    /// <inheritdoc/>
    public override bool Takes(string? unit) => unit is null;
}

/// <summary>A mass as it lay (not dry) in kilograms, tonnes or pounds.</summary>
public sealed record MassColumn(string Name, bool Required, string Meaning) : Column(Name, Required, Meaning)
{
    private static readonly string[] Units = ["kg", "t", "lb"];

    /// <inheritdoc/>
    public override IReadOnlyList<string> Headings => Units.Select(u => $"{Name} [{u}]").ToArray();

    /// <inheritdoc/>
    public override bool Takes(string? unit) => Units.Contains(unit);
}

/// <summary>A share of a whole in per cent that has no moisture basis.</summary>
public sealed record ShareColumn(string Name, bool Required, string Meaning) : Column(Name, Required, Meaning)
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Headings => [$"{Name} [%]"];

    /// <inheritdoc/>
    public override bool Takes(string? unit) => unit == "%";
}

/// <summary>A moment: with its offset, or local in a zone.</summary>
public sealed record TimeColumn(string Name, bool Required, string Meaning) : Column(Name, Required, Meaning)
{
    /// <summary>Unit of a column in which every time carries its offset.</summary>
    public const string WithOffset = "ISO 8601 with offset";

    /// <summary>Unit of a column of local times, the zone being declared or chosen.</summary>
    public const string Local = "local";

    /// <inheritdoc/>
    public override IReadOnlyList<string> Headings => [$"{Name} [{WithOffset}]", $"{Name} [{Local}]", $"{Name} [Europe/Paris]"];

    /// <inheritdoc/>
    public override bool IsNumeric => false;

    /// <inheritdoc/>
    public override bool Takes(string? unit) => unit is not null
        && (unit.Equals(WithOffset, StringComparison.OrdinalIgnoreCase) || unit.Equals(Local, StringComparison.OrdinalIgnoreCase) || Zone(unit) is not null);

    internal static DateTimeZone? Zone(string id) => DateTimeZoneProviders.Tzdb.GetZoneOrNull(id);
}

/// <summary>A reading of a property, or its standard uncertainty, in a unit and where the property needs it on a moisture basis.</summary>
public sealed record ReadingColumn(string Name, Property What, bool IsUncertainty = false)
    : Column(Name, false, IsUncertainty ? "one standard uncertainty of the reading, same unit and basis" : "a reading, as reported")
{
    /// <inheritdoc/>
    public override IReadOnlyList<string> Headings => Ledger.Readings.UnitsOf(What)
        .SelectMany(u => What.NeedsBasis() ? new[] { $"{Name} [{u} 12mb]", $"{Name} [{u} 14mb]", $"{Name} [{u} dry]" } : [$"{Name} [{u}]"]).ToArray();

    /// <inheritdoc/>
    public override bool Takes(string? unit) => unit is not null && Split(unit) is var parts
        && Ledger.Readings.UnitsOf(What).Contains(parts.Unit) && parts.Basis.IsStated == What.NeedsBasis();

    internal static (string Unit, Basis Basis) Split(string unit)
    {
        // A unit may hold a space itself, as /100 g does; only a basis is cut off.
        var space = unit.IndexOf(' ', StringComparison.Ordinal);
        return space >= 0 && Basis.TryParse(unit[(space + 1)..], out var basis) ? (unit[..space], basis) : (unit, default);
    }
}
