namespace Evengrist.Packing.NetContent;

/// <summary>What weighing a sample of a batch found by the rules of the European Union.</summary>
/// <param name="Plan">The plan of the batch; null where it was weighed whole.</param>
/// <param name="Mean">Mean of the net weights of the first sample, grams.</param>
/// <param name="Deviation">Their standard deviation, grams.</param>
/// <param name="LeastMean">What the mean must reach, grams.</param>
/// <param name="First">T1, grams.</param>
/// <param name="Second">T2, grams.</param>
/// <param name="Inadequate">Packages below T1, of both samples where there are two.</param>
/// <param name="BelowSecond">Packages below T2, of both samples.</param>
/// <param name="Count">What the count says.</param>
public sealed record BatchFinding(BatchPlan? Plan, double Mean, double Deviation, double LeastMean, double First, double Second, int Inadequate, int BelowSecond, CountVerdict Count)
{
    /// <summary>Whether the mean reaches what it must.</summary>
    public bool IsMeanEnough => Mean >= LeastMean;

    /// <summary>Whether no package lies below T2, as the mark e asks.</summary>
    public bool MayBearMark => BelowSecond == 0;

    /// <summary>Whether the batch passes all three rules.</summary>
    public bool Passes => IsMeanEnough && MayBearMark && Count == CountVerdict.Accepted;
}

/// <summary>What the count of inadequate packages says.</summary>
public enum CountVerdict
{
    /// <summary>Not said.</summary>
    None,

    /// <summary>Few enough.</summary>
    Accepted,

    /// <summary>In between: a second sample is weighed.</summary>
    SecondSample,

    /// <summary>Too many.</summary>
    Rejected,
}
