using Evengrist.Bins.States;
using Evengrist.Web.Face;

namespace Evengrist.Web.Sights;

/// <summary>The shape that goes with a state of a bin.</summary>
public static class BinStateShape
{
    /// <summary>Stop for a person and gas, hold for a hold, watch for what is shut or moving, clear else.</summary>
    public static StateKind Of(BinState state) => state switch
    {
        BinState.PersonInside or BinState.UnderGas => StateKind.Stop,
        BinState.Held => StateKind.Hold,
        BinState.Shut or BinState.Drawing or BinState.Filling => StateKind.Watch,
        _ => StateKind.Clear,
    };
}
