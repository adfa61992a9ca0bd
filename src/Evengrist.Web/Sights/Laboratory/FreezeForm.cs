using Evengrist.Laboratory.Charts;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Limits to be frozen from a period, as typed; on the page and over HTTP.</summary>
public sealed class FreezeForm
{
    /// <summary>Code of the chart; the page knows it.</summary>
    public string? Chart { get; set; }

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

    /// <summary>Four, Eight or One; Four where left out.</summary>
    public string? Rules { get; set; }

    /// <summary>Why.</summary>
    public string? Reason { get; set; }

    /// <summary>Keeps them; every fault where they cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="from">The beginning, as read; null where it could not be.</param>
    /// <param name="until">The end.</param>
    /// <param name="by">Who; null where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The present moment.</param>
    public IReadOnlyList<string> Keep(Mill mill, Instant? from, Instant? until, string? by, string nameless, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var faults = new List<string>();
        var wanted = (TypedNumber.Read("The target", Target, faults), TypedNumber.Read("The lower limit", Lower, faults), TypedNumber.Read("The upper limit", Upper, faults));
        faults.AddRange(EntryFaults.Of("-", from is null ? null : until, by, nameless));
        if (!RunRules.Sets.TryGetValue(string.IsNullOrWhiteSpace(Rules) ? "Four" : Rules.Trim(), out var rules))
        {
            faults.Add($"Rules are {string.Join(", ", RunRules.Sets.Keys)}; read \"{Rules}\".");
        }

        return faults.Count > 0 ? faults : new FreezeLimits(Chart ?? "", (from!.Value, until!.Value), wanted, rules!, Reason ?? "").In(mill, by!, now);
    }
}
