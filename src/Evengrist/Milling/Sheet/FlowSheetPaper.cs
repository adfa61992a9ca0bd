namespace Evengrist.Milling.Sheet;

/// <summary>A flow sheet as a mill keeps it, with why this version was made.</summary>
/// <param name="Reason">Why, in the words of who kept it; up to <see cref="LongestReason"/> characters.</param>
/// <param name="Sheet">The sheet.</param>
public sealed record FlowSheetPaper(string Reason, FlowSheet Sheet)
{
    /// <summary>Most characters of a reason [ours].</summary>
    public const int LongestReason = 400;

    /// <summary>What is wrong, each a sentence; empty where it can be kept.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Reason.Trim().Length is > 0 and <= LongestReason ? Array.Empty<string>() : [$"Say why this version is made, in up to {LongestReason} characters: who reads it later was not there."],
        .. Sheet.Faults(),
    ];
}
