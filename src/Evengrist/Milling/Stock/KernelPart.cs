namespace Evengrist.Milling.Stock;

/// <summary>A part of the kernel that stock is made of, from the middle outwards.</summary>
public enum KernelPart
{
    /// <summary>The inner endosperm: the least ash and protein.</summary>
    InnerEndosperm = 0,

    /// <summary>The endosperm between.</summary>
    MiddleEndosperm = 1,

    /// <summary>The outer endosperm: more protein and ash, clings to the bran.</summary>
    OuterEndosperm = 2,

    /// <summary>Bran with its aleurone.</summary>
    Bran = 3,

    /// <summary>Germ.</summary>
    Germ = 4,
}
