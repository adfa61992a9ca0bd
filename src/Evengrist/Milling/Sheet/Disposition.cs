namespace Evengrist.Milling.Sheet;

/// <summary>How the flutes of a pair of break rolls meet: the fast roll's side first, then the slow roll's.</summary>
public enum Disposition
{
    /// <summary>Not said; right for smooth rolls.</summary>
    None = 0,

    /// <summary>Sharp to sharp: cuts; sizes lie even over the range.</summary>
    SharpToSharp = 1,

    /// <summary>Sharp to dull.</summary>
    SharpToDull = 2,

    /// <summary>Dull to sharp.</summary>
    DullToSharp = 3,

    /// <summary>Dull to dull: presses; much that is fine, much large bran, little between.</summary>
    DullToDull = 4,
}
