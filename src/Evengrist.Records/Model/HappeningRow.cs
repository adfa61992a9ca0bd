namespace Evengrist.Records.Model;

public sealed class HappeningRow : FactRow
{
    public int Place { get; init; }

    public long AtUs { get; init; }

    public int Kind { get; init; }

    public required string Text { get; init; }
}
