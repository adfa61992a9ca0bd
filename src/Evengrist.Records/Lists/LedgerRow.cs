using Evengrist.Ledger;
using Evengrist.Records.Browsing;

namespace Evengrist.Records.Lists;

/// <summary>A fact with its places, on its way out.</summary>
internal sealed record LedgerRow(FactLine Line, Place? One, Place? Other)
{
    public Fact Fact => Line.Fact;

    public Movement? Moved => (Fact as Moved)?.Movement;

    public Reading? Read => (Fact as Measured)?.Reading;

    public Happening? Happened => (Fact as Happened)?.Happening;
}
