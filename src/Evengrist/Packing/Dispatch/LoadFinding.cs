namespace Evengrist.Packing.Dispatch;

/// <summary>Something that is said of a package, a trailer or a load.</summary>
/// <param name="Weight">Whether it stops, asks or warns.</param>
/// <param name="Words">A sentence that says what and what to do.</param>
public sealed record LoadFinding(FindingWeight Weight, string Words)
{
    /// <summary>Whether findings keep an act from being done: one stops it, or one asks and no reason is given.</summary>
    /// <param name="findings">What is said of it.</param>
    /// <param name="reason">Why it is done all the same; empty where nobody says.</param>
    public static bool Bar(IReadOnlyList<LoadFinding> findings, string reason)
    {
        ArgumentNullException.ThrowIfNull(findings);
        ArgumentNullException.ThrowIfNull(reason);
        return findings.Any(f => f.Weight == FindingWeight.Stop || (f.Weight == FindingWeight.Ask && reason.Length == 0));
    }

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
