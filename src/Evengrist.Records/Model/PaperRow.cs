namespace Evengrist.Records.Model;

/// <summary>One version of a standing arrangement, as JSON; a change is a further version.</summary>
public sealed class PaperRow
{
    public required string Kind { get; init; }

    public required string Code { get; init; }

    public int Version { get; init; }

    public required string Json { get; init; }

    public required string By { get; init; }

    public long RecordedUs { get; init; }
}
