using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>A clean-down to be signed, or what was found of one.</summary>
public sealed class CleanForm
{
    /// <summary><c>sign</c> or <c>verify</c>.</summary>
    public string? Do { get; set; }

    /// <summary>Code of the line.</summary>
    public string? Line { get; set; }

    /// <summary>When it was clean.</summary>
    public string? At { get; set; }

    /// <summary>How long it took, min.</summary>
    public string? Minutes { get; set; }

    /// <summary>How it was cleaned.</summary>
    public string? Method { get; set; }

    /// <summary>The clean-down that was verified.</summary>
    public string? Of { get; set; }

    /// <summary><c>nothing</c> or <c>found</c>.</summary>
    public string? Found { get; set; }

    /// <summary>Method and result.</summary>
    public string? Words { get; set; }

    /// <summary>Records it; every fault where it cannot be, and then nothing is recorded.</summary>
    internal IReadOnlyList<string> Act(Mill mill, string? by, Func<string?, Instant?> read, Instant asOf)
    {
        if (Do == "verify")
        {
            return CleanDowns.Verify(mill, Of ?? "", Found != "found", Words ?? "", asOf, by).Faults;
        }

        List<string> faults = [];
        var minutes = TypedNumber.Read("How long it took, min", Minutes, faults, 1, 1440, demanded: true);
        if (read(At) is not { } at)
        {
            faults.Add($"“{At}” is no day and time.");
        }
        else if (at > asOf)
        {
            faults.Add("It cannot be signed before it was done: the time is after the moment looked at.");
        }
        else if (faults.Count == 0)
        {
            return CleanDowns.Sign(mill, Line ?? "", Method ?? "", (int)minutes!.Value, at, by).Faults;
        }

        return faults;
    }
}
