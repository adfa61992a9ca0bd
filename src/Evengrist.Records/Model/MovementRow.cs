namespace Evengrist.Records.Model;

public sealed class MovementRow : FactRow
{
    public int FromPlace { get; init; }

    public int ToPlace { get; init; }

    public long MassG { get; init; }

    public long AtUs { get; init; }

    public long UntilUs { get; init; }
}
