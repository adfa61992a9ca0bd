namespace Evengrist.Records.Model;

/// <summary>One version of a contract, as JSON; a change of terms is a further version.</summary>
public sealed class ContractRow
{
    public required string Code { get; init; }

    public int Version { get; init; }

    public required string Json { get; init; }

    public required string By { get; init; }

    public long RecordedUs { get; init; }
}
