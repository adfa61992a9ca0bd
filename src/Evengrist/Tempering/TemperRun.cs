using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Tempering;

/// <summary>How a temper bin is being run, by what persons recorded of it; seen, not reckoned from movements.</summary>
/// <param name="FillingSince">Since when it is filled; null where it is not, as far as was recorded.</param>
/// <param name="DrawingSince">Since when it is drawn; null where it is not.</param>
/// <param name="TonnesPerHourIn">Clean wheat as set when filling began, t/h; null where not said.</param>
/// <param name="LitresPerHour">Water as it was set last, L/h; null where none is known to be set.</param>
/// <param name="WaterSince">Since when the water is set so; null where none is known to be set.</param>
/// <param name="LitresByNow">Water let in since filling began, if it ran as it was set, L; null where a setting of it is not known.</param>
public sealed record TemperRun(Instant? FillingSince, Instant? DrawingSince, double? TonnesPerHourIn, double? LitresPerHour, Instant? WaterSince, double? LitresByNow)
{
    private static readonly TemperRun Idle = new(null, null, null, null, null, null);

    /// <summary>What can be recorded next.</summary>
    public IReadOnlyList<TemperAct> Next =>
        [TemperAct.WaterSet, FillingSince is null ? TemperAct.FillingBegun : TemperAct.FillingEnded, DrawingSince is null ? TemperAct.DrawingBegun : TemperAct.DrawingEnded];

    /// <summary>How it was run at a moment.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="bin">The temper bin.</param>
    /// <param name="at">The moment; what was recorded of later does not count.</param>
    public static TemperRun Of(Book book, PlaceId bin, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        var run = book.HappeningsOn(bin).Where(h => h.At <= at).Select(h => (h.At, Entry: TemperEntry.Of(h))).Where(h => h.Entry is not null).Aggregate(Idle, (so, h) => so.After(h.At, h.Entry!));
        return run.LetInUntil(at);
    }

    private TemperRun After(Instant at, TemperEntry entry) => entry.Act switch
    {
        TemperAct.FillingBegun => this with
        {
            FillingSince = at, TonnesPerHourIn = entry.TonnesPerHour, LitresPerHour = entry.LitresPerHour, WaterSince = entry.LitresPerHour is null ? null : at, LitresByNow = entry.LitresPerHour is null ? null : 0,
        },
        TemperAct.FillingEnded => this with { FillingSince = null, TonnesPerHourIn = null, LitresPerHour = null, WaterSince = null, LitresByNow = null },
        TemperAct.WaterSet => (FillingSince == at ? this with { LitresByNow = 0 } : LetInUntil(at)) with { LitresPerHour = entry.LitresPerHour, WaterSince = at },
        TemperAct.DrawingBegun => this with { DrawingSince = at },
        TemperAct.DrawingEnded => this with { DrawingSince = null },
        _ => this,
    };

    // Only while it is filled: water set at a bin that is not tells nothing of litres.
    private TemperRun LetInUntil(Instant at) => LitresByNow is { } litres && LitresPerHour is { } rate && WaterSince is { } since ? this with { LitresByNow = litres + (rate * (at - since).TotalHours) } : this;
}
