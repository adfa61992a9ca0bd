namespace Evengrist.Demo;

/// <summary>The demonstration mill: an invented mill's crop year as facts, the same for the same seed.</summary>
public static class DemonstrationMill
{
    /// <summary>The seed of the demonstration as it is shown.</summary>
    public const ulong Seed = 20250701;

    /// <summary>Name of the mill.</summary>
    public const string Name = "Sennorby Mill";

    /// <summary>Everything recorded in the year, in the order of recording.</summary>
    public static IEnumerable<DemoBatch> Drafts(ulong seed = Seed) => new Year(seed).Batches();

    /// <summary>The same with the hidden truth, which is complete once the batches have been gone through. For tests.</summary>
    public static (IEnumerable<DemoBatch> Batches, Truth Truth) WithTruth(ulong seed = Seed)
    {
        var year = new Year(seed);
        return (year.Batches(), year.Truth);
    }
}
