namespace Evengrist.Records.Model;

public sealed class PlaceRow : FactRow
{
    /// <summary>The ledger's number of the place, from 1 in the order of opening; other tables refer to it.</summary>
    public int Number { get; init; }

    public required string Code { get; init; }

    public int Kind { get; init; }

    public required string Name { get; init; }

    public required string Material { get; init; }

    public long? CapacityG { get; init; }

    public required string Of { get; init; }

    public double CoreShare { get; init; }

    public long StirredG { get; init; }
}
