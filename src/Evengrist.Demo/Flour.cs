namespace Evengrist.Demo;

/// <summary>The flours the demonstration mill makes.</summary>
public enum Flour
{
    /// <summary>White bread, patent.</summary>
    WB,

    /// <summary>All-purpose.</summary>
    AP,

    /// <summary>High gluten.</summary>
    HG,

    /// <summary>Pastry, of soft wheat.</summary>
    PA,

    /// <summary>Whole wheat.</summary>
    WW,

    /// <summary>First clear.</summary>
    C1,

    /// <summary>Second clear.</summary>
    C2,

    /// <summary>Pancake mix with soy, of all-purpose.</summary>
    SM,
}
