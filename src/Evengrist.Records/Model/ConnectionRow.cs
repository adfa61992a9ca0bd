namespace Evengrist.Records.Model;

public sealed class ConnectionRow : FactRow
{
    public int FromPlace { get; init; }

    public int ToPlace { get; init; }
}
