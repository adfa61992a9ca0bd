namespace Evengrist.Ledger;

/// <summary>A place was opened.</summary>
/// <param name="Number">The number of the fact.</param>
/// <param name="Place">The place.</param>
/// <param name="Attribution">Who, when recorded, from which source.</param>
public sealed record PlaceOpened(FactId Number, Place Place, Attribution Attribution) : Fact(Attribution)
{
    /// <inheritdoc/>
    public override FactId Id => Number;
}

/// <summary>Two fixed places were connected: grain can go from one to the other.</summary>
/// <param name="Number">The number of the fact.</param>
/// <param name="From">Where grain leaves.</param>
/// <param name="To">Where it goes.</param>
/// <param name="Attribution">Who, when recorded, from which source.</param>
public sealed record Connected(FactId Number, PlaceId From, PlaceId To, Attribution Attribution) : Fact(Attribution)
{
    /// <inheritdoc/>
    public override FactId Id => Number;
}

/// <summary>Grain was moved.</summary>
/// <param name="Movement">The movement.</param>
/// <param name="Attribution">Who, when recorded, from which source.</param>
public sealed record Moved(Movement Movement, Attribution Attribution) : Fact(Attribution)
{
    /// <inheritdoc/>
    public override FactId Id => Movement.Id;
}

/// <summary>Something was measured.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="Attribution">Who, when recorded, from which source.</param>
public sealed record Measured(Reading Reading, Attribution Attribution) : Fact(Attribution)
{
    /// <inheritdoc/>
    public override FactId Id => Reading.Id;
}

/// <summary>Something happened to a place.</summary>
/// <param name="Happening">The happening.</param>
/// <param name="Attribution">Who, when recorded, from which source.</param>
public sealed record Happened(Happening Happening, Attribution Attribution) : Fact(Attribution)
{
    /// <inheritdoc/>
    public override FactId Id => Happening.Id;
}
