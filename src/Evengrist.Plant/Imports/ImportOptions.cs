using Evengrist.Plant.Tables;
using NodaTime;

namespace Evengrist.Plant.Imports;

/// <summary>What the person who imports a file says about it.</summary>
public sealed record ImportOptions
{
    /// <summary>The decimal mark; null to take what the file declares, or what its numbers show without doubt.</summary>
    public DecimalMark? Decimal { get; init; }

    /// <summary>The zone of times without an offset; null to take what the file declares.</summary>
    public DateTimeZone? Zone { get; init; }

    /// <summary>How much is read.</summary>
    public Limits Limits { get; init; } = new();
}
