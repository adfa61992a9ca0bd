namespace Evengrist.Ledger;

/// <summary>How grain may leave a bin: a hypothesis, since nobody sees it. Reckoning takes it as an argument; no fact holds it.</summary>
public enum Outflow
{
    /// <summary>First in, first out.</summary>
    FirstInFirstOut,

    /// <summary>The core over the outlet first, bottom to top, then the surface from the top layer down.</summary>
    CoreFirst,

    /// <summary>Stirred: what leaves is the mean of what lies in it.</summary>
    Stirred,
}
