namespace Evengrist.Streams;

/// <summary>What is read on a flour stream.</summary>
public enum StreamProperty
{
    /// <summary>Nothing; never a value.</summary>
    None,

    /// <summary>Ash, per cent on the survey's basis.</summary>
    Ash,

    /// <summary>Protein, per cent on the survey's basis.</summary>
    Protein,

    /// <summary>Falling number, seconds; averages as the liquefaction number.</summary>
    FallingNumber,

    /// <summary>Damaged starch, per cent by the mill's own method.</summary>
    StarchDamage,
}
