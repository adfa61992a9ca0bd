using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Bins.States;

/// <summary>How a bin stands at a moment, with the facts that say so.</summary>
/// <param name="States">Every state that holds, the gravest first; never empty.</param>
/// <param name="Bars">What keeps grain from going in or out.</param>
/// <param name="LastMoved">When grain last went in or out; null where it never did.</param>
/// <param name="ProvenEmpty">That it was proven empty, where nothing has come in since; null otherwise.</param>
public sealed record BinStanding(IReadOnlyList<BinState> States, Bars Bars, Instant? LastMoved, Happening? ProvenEmpty)
{
    /// <summary>The gravest state.</summary>
    public BinState Gravest => States[0];

    /// <summary>Whether the bin is left out of every suggestion: a person is inside, it is under gas, on hold, or shut.</summary>
    public bool IsOut => Bars.IsAny;

    /// <summary>What keeps grain from going in; null where nothing does.</summary>
    public Happening? AgainstFilling => Bars.AgainstIn(PlaceKind.Bin);

    /// <summary>What keeps grain from being drawn; null where nothing does.</summary>
    public Happening? AgainstDrawing => Bars.AgainstOut;
}
