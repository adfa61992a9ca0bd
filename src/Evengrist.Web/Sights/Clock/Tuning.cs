using Evengrist.Ledger;
using Evengrist.Milling.Balance;
using Evengrist.Milling.Clock;
using NodaTime;

namespace Evengrist.Web.Sights.Clock;

/// <summary>What readings about a former change say of the way, against what the ledger says.</summary>
/// <param name="At">The former change.</param>
/// <param name="What">The property read.</param>
/// <param name="Points">The readings, in hours of running since the change.</param>
/// <param name="Outcome">The step laid through them; null where the way cannot be told.</param>
/// <param name="ByLedger">The way as the ledger had it then; empty with it.</param>
public sealed record Tuning(Instant At, Property What, IReadOnlyList<StepPoint> Points, StepOutcome? Outcome, IReadOnlyList<ClockStage> ByLedger)
{
    private static readonly Duration Before = Duration.FromDays(3), After = Duration.FromDays(4);

    /// <summary>Dead time of the readings less that of the ledger, h.</summary>
    public double Shift => Outcome is StepFitted fitted ? fitted.Stage.DelayHours - ByLedger.Sum(s => s.DelayHours) : 0;

    /// <summary>Tunes from a change: readings count from where the change before it is through until the next one comes.</summary>
    public static Tuning Of(Book book, MillSection section, Instant at, Instant now, WayTimes times, Property what)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(section);
        var (way, _) = WayOfUnit.Of(book, section, at, now, times);
        if (way is null)
        {
            return new Tuning(at, what, [], null, []);
        }

        var arrivals = ArrivalClock.Of(way.Stages).Stages[^1].Arrivals;
        var around = MixChange.Of(book, section, at - Before, Instant.Min(now, at + After), ClockSight.LeastPoints).Where(c => c.At != at).ToArray();
        var from = around.Where(c => c.At < at).Select(c => way.Running.When(way.Running.At(c.At) + arrivals[2].Hours)).DefaultIfEmpty(at - Before).Max();
        var until = around.Where(c => c.At > at).Select(c => way.Running.When(way.Running.At(c.At) + arrivals[0].Hours)).DefaultIfEmpty(at + After).Min();
        var points = StepReadings.Of(book, way.Unit.Id, what, way.Running, from, Instant.Min(until, now));
        return new Tuning(at, what, points, StepFit.Of(points), way.Stages);
    }

    /// <summary>A way tuned: its longest stage gets the difference in dead time and all that is stirred by the readings, the others nothing stirred; as it is where they do not tell.</summary>
    public IReadOnlyList<ClockStage> Put(IReadOnlyList<ClockStage> stages)
    {
        ArgumentNullException.ThrowIfNull(stages);
        if (Outcome is not StepFitted fitted)
        {
            return stages;
        }

        var longest = stages.Index().MaxBy(s => s.Item.DelayHours + s.Item.StirredHours).Index;
        return
        [
            .. stages.Select((s, i) => i != longest ? s with { StirredHours = 0, StirredUncertainty = 0 } : s with
            {
                DelayHours = Math.Max(0, s.DelayHours + Shift), StirredHours = fitted.Stage.StirredHours,
                DelayUncertainty = Math.Sqrt(Math.Pow(fitted.Stage.DelayUncertainty, 2) + Math.Pow(s.DelayUncertainty, 2)), StirredUncertainty = fitted.Stage.StirredUncertainty,
            }),
        ];
    }
}
