namespace Evengrist.Packing.NetContent;

/// <summary>What weighing a sample of a lot found by the rules of the United States.</summary>
/// <param name="Plan">The plan of the lot.</param>
/// <param name="MeanError">Mean of net weight less label, grams.</param>
/// <param name="Deviation">Standard deviation of the errors, grams.</param>
/// <param name="ErrorLimit">Sample error limit: the plan's factor times <paramref name="Deviation"/>, grams.</param>
/// <param name="Variation">Allowed variation of one package, grams.</param>
/// <param name="Short">How many are short by more than it.</param>
/// <param name="Average">What the average test says.</param>
public sealed record PackageFinding(PackagePlan Plan, double MeanError, double Deviation, double ErrorLimit, double Variation, int Short, AverageVerdict Average)
{
    /// <summary>Whether no more packages are short by more than the allowed variation than the plan allows.</summary>
    public bool IsEachEnough => Short <= Plan.Allowed;

    /// <summary>Whether the lot passes both tests.</summary>
    public bool Passes => Average == AverageVerdict.Passes && IsEachEnough;
}

/// <summary>What the average test says.</summary>
public enum AverageVerdict
{
    /// <summary>Not said.</summary>
    None,

    /// <summary>The mean is not below the label by more than the sample error limit.</summary>
    Passes,

    /// <summary>It is, by no more than flour may have lost by drying: whether it has is looked into before anything is done.</summary>
    Grey,

    /// <summary>It is, by more than that.</summary>
    Fails,
}
