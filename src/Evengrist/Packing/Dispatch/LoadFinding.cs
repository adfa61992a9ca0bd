namespace Evengrist.Packing.Dispatch;

/// <summary>Something that is said of a package, a trailer or a load.</summary>
/// <param name="Weight">Whether it stops, asks or warns.</param>
/// <param name="Words">A sentence that says what and what to do.</param>
public sealed record LoadFinding(FindingWeight Weight, string Words)
{
    internal static LoadFinding Stop(string words) => new(FindingWeight.Stop, words);

    internal static LoadFinding Ask(string words) => new(FindingWeight.Ask, words);

    internal static LoadFinding Caution(string words) => new(FindingWeight.Caution, words);
}

/// <summary>How much a finding weighs.</summary>
public enum FindingWeight
{
    /// <summary>Worth knowing; nothing is asked.</summary>
    Caution,

    /// <summary>A named person goes on with a reason.</summary>
    Ask,

    /// <summary>Nobody goes on.</summary>
    Stop,
}
