namespace Evengrist.Bins.States;

/// <summary>The states in plain words.</summary>
public static class BinStateWords
{
    /// <summary><c>person inside</c>, <c>proven empty</c>, <c>HOLD</c>.</summary>
    public static string Words(this BinState state) => state switch
    {
        BinState.PersonInside => "person inside",
        BinState.UnderGas => "under gas",
        BinState.Held => "HOLD",
        BinState.ProvenEmpty => "proven empty",
        _ => state.ToString().ToLowerInvariant(),
    };
}
