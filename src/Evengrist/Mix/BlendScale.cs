namespace Evengrist.Mix;

/// <summary>The scale on which a property averages.</summary>
public enum BlendScale
{
    /// <summary>The property itself.</summary>
    Itself,

    /// <summary>The liquefaction number 6000/(FN − 50); a higher one is a lower falling number.</summary>
    Liquefaction,

    /// <summary>Its reciprocal, times a constant: mass over a volume or a count, of which volumes and counts add up.</summary>
    Reciprocal,
}
