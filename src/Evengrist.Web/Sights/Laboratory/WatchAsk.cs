using Evengrist.Laboratory.Watch;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>What is asked of the watch, as typed on the page or over HTTP.</summary>
public sealed class WatchAsk
{
    /// <summary>Longest span, minutes [ours].</summary>
    public const double MostMinutes = 1440;

    private WatchAsk(TypedFields fields) => Fields = fields;

    /// <summary>The fields as typed.</summary>
    public TypedFields Fields { get; }

    /// <summary>Which of what can be watched; empty for the first.</summary>
    public string Chosen { get; private init; } = "";

    /// <summary>How far apart in time two readings of the same flour may be.</summary>
    public Duration Span { get; private init; }

    /// <summary>Pairs from here on; null for all since the bias was last set.</summary>
    public string From { get; private init; } = "";

    /// <summary>Reads it.</summary>
    public static WatchAsk Of(Func<string, string?> typed)
    {
        var fields = new TypedFields(typed);
        var minutes = fields.Number("span", "Minutes between two readings", 0) ?? 0;
        if (minutes is not (>= 0 and <= MostMinutes))
        {
            fields.Fault($"Minutes between two readings: from 0 to {MostMinutes}.");
            minutes = 0;
        }

        return new(fields) { Chosen = fields.Text("watch", ""), Span = Duration.FromMinutes(minutes), From = fields.Text("from", "") };
    }

    /// <summary>The question to the model; its own faults are among the fields' then.</summary>
    /// <param name="found">The pairs.</param>
    public WatchSpec? Spec(PairedReadings found)
    {
        ArgumentNullException.ThrowIfNull(found);
        var spec = new WatchSpec([.. found.Numbers.TakeLast(WatchSpec.Most)])
        {
            ReferenceDeviation = Fields.Number("reference", "One standard deviation of the reference", found.ReferenceDeviation),
            PairDeviation = Fields.Number("pair", "One standard deviation of a pair", found.PairDeviation),
            Quiet = (int?)Fields.Number("quiet", "Quiet first pairs"),
            Allowance = Fields.Number("k", "k of the plain sum"),
            Limit = Fields.Number("h", "h of the plain sum"),
        };
        foreach (var fault in spec.Faults())
        {
            Fields.Fault(fault);
        }

        return Fields.Faults.Count > 0 ? null : spec;
    }
}
