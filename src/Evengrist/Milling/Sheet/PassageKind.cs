namespace Evengrist.Milling.Sheet;

/// <summary>What a passage of the mill is for.</summary>
public enum PassageKind
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>Break: fluted rolls open the kernel and scrape the bran, then a sifter.</summary>
    Break = 1,

    /// <summary>Sizing: rolls free coarse semolina from bran that clings to it, then a sifter.</summary>
    Sizing = 2,

    /// <summary>Reduction: smooth rolls grind semolina and middlings to flour, then a sifter.</summary>
    Reduction = 3,

    /// <summary>Purifier: air and cloths divide semolina by weight and size.</summary>
    Purifying = 4,

    /// <summary>Bran or shorts finisher: beaters strip the last flour from bran.</summary>
    Finishing = 5,

    /// <summary>Grader: a sifter alone.</summary>
    Grading = 6,
}
