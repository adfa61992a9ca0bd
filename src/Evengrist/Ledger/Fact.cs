namespace Evengrist.Ledger;

/// <summary>Anything the ledger holds: appended once, never edited, put right only by a later fact that names it.</summary>
/// <param name="Attribution">Who, when recorded, from which source.</param>
public abstract record Fact(Attribution Attribution)
{
    /// <summary>The number of the fact.</summary>
    public abstract FactId Id { get; }
}
