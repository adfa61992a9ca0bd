using Evengrist.Laboratory.Charts;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Limits to be frozen from a period, as typed.</summary>
public sealed class FreezeForm
{
    /// <summary>The period's beginning, by the mill's clock.</summary>
    public string? From { get; set; }

    /// <summary>The period's end.</summary>
    public string? Until { get; set; }

    /// <summary>What is wanted.</summary>
    public string? Target { get; set; }

    /// <summary>The flour's lower limit.</summary>
    public string? Lower { get; set; }

    /// <summary>The flour's upper limit.</summary>
    public string? Upper { get; set; }

    /// <summary>Four, Eight or One.</summary>
    public string? Rules { get; set; }

    /// <summary>Why.</summary>
    public string? Reason { get; set; }

    /// <summary>Keeps them; every fault where they cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="sight">What is charted.</param>
    /// <param name="from">The beginning, as read; null where it could not be.</param>
    /// <param name="until">The end.</param>
    /// <param name="by">Who; null where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    public IReadOnlyList<string> Keep(Mill mill, ChartSight sight, Instant? from, Instant? until, string? by, string nameless)
    {
        ArgumentNullException.ThrowIfNull(sight);
        var faults = new List<string>();
        var wanted = (TypedNumber.Read("The target", Target, faults), TypedNumber.Read("The lower limit", Lower, faults), TypedNumber.Read("The upper limit", Upper, faults));
        faults.AddRange(EntryFaults.Of("-", from is null ? null : until, by, nameless));
        if (sight.Code.Length == 0)
        {
            faults.Add("There is nothing to chart yet.");
        }

        return faults.Count > 0 ? faults : ChartBooks.Freeze(mill, FrozenLimits.Of(
            sight.Place, sight.What, sight.Method, (from!.Value, until!.Value), sight.Within(from.Value, until.Value), wanted, Rules switch { "Eight" => RunRules.Eight, "One" => [RunRule.BeyondThree], _ => RunRules.Four }, (Reason ?? "").Trim()) with { Flour = sight.Flour }, by!);
    }
}
