using Evengrist.Laboratory.Charts;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>What was done about a signal, as typed; on the page and over HTTP.</summary>
public sealed class ChartActionForm
{
    /// <summary>Code of the chart; the page knows it.</summary>
    public string? Chart { get; set; }

    /// <summary>When the reading that signals was taken: in ticks on the page, a moment over HTTP.</summary>
    public string? Point { get; set; }

    /// <summary>What was found and done.</summary>
    public string? Done { get; set; }

    /// <summary>Keeps it beside the signal; every fault where it cannot be, and then nothing is kept. What was noted before stays.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="sight">The chart.</param>
    /// <param name="point">The reading's moment, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    public IReadOnlyList<string> Keep(Mill mill, ChartSight sight, Instant? point, string? by, string nameless)
    {
        ArgumentNullException.ThrowIfNull(sight);
        var signal = sight.Signals.FirstOrDefault(s => s.At == point);
        return signal.Words is null ? ["That signal is not on the chart any more: choose one of those it shows."]
            : string.IsNullOrWhiteSpace(by) ? [nameless]
            : ChartBooks.Act(mill, new ChartAction(sight.Code, signal.At, signal.Words, (Done ?? "").Trim()), by);
    }
}
