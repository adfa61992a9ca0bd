namespace Evengrist.Records.Model;

/// <summary>Decimal values are kept as text, so that every digit that was reported reads back: <c>12.10</c> stays <c>12.10</c>.</summary>
public sealed class ReadingRow : FactRow
{
    public int Place { get; init; }

    public long AtUs { get; init; }

    public int What { get; init; }

    public required string Value { get; init; }

    public required string Unit { get; init; }

    /// <summary>Moisture of the basis, per cent; 0 is dry; null where the property has no basis.</summary>
    public string? BasisPct { get; init; }

    public required string Method { get; init; }

    public required string Instrument { get; init; }

    public string? StandardUncertainty { get; init; }
}
