namespace Evengrist.Records.Model;

/// <summary>What every stored fact carries: its number, who, when, from which source, and which earlier fact it stands in for.</summary>
public abstract class FactRow
{
    public long Id { get; init; }

    public required string By { get; init; }

    public required string Source { get; init; }

    public required string SourceKey { get; init; }

    public long RecordedUs { get; init; }

    public long? Corrects { get; init; }

    public string? Note { get; init; }
}
