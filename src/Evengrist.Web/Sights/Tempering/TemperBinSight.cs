using Evengrist.Ledger;
using Evengrist.Tempering;
using Evengrist.Web.Face;
using NodaTime;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>One temper bin on the board.</summary>
/// <param name="Place">The bin.</param>
/// <param name="Queue">What lies there in the order in which it went in.</param>
/// <param name="All">All that lies there.</param>
/// <param name="Newest">What ran in last; of this the water of the moment is judged.</param>
/// <param name="Next">What leaves next; of this the rest is judged.</param>
/// <param name="NextTonnes">How much of it was looked at, t.</param>
/// <param name="Temperature">The temperature read in it within a day, where none was typed; null otherwise.</param>
/// <param name="Run">How it is run, as persons recorded it.</param>
/// <param name="At">The moment.</param>
public sealed record TemperBinSight(Place Place, TemperQueue Queue, TemperPart All, TemperPart Newest, TemperPart Next, double NextTonnes, Reading? Temperature, TemperRun Run, Instant At)
{
    /// <summary>Whether nothing lies there.</summary>
    public bool IsEmpty => Queue.FirstIn is null;

    /// <summary>When first and last wheat are ready, each by its own rest; null where nothing lies there or a rest is not known.</summary>
    public RestWindow? Window => Queue is { FirstIn: { } first, LastIn: { } last } && Next.Rest is { } now && Newest.Rest is { } then
        ? new RestWindow(first, last, Duration.FromHours(now.LongerHours), Duration.FromHours(then.LongerHours)) : null;

    /// <summary>How long the least rested of what leaves next has lain; null where nothing lies there.</summary>
    public Duration? LeastRested => (Queue.MixedUntil ?? Queue.FirstIn) is { } since ? At - since : null;

    /// <summary>By how much what leaves next is short of its rest; null where nothing runs out, no rest is known, or it is not short.</summary>
    public Duration? Short => Queue.TonnesPerHourOut > 0 && Next.Rest is { } rest && LeastRested is { } lain && Duration.FromHours(rest.LongerHours) - lain is var missing && missing > Duration.Zero ? missing : null;

    /// <summary>How its rest stands.</summary>
    public StateKind Kind => Short is not null || Window is null ? StateKind.Watch : StateKind.Clear;

    /// <summary>The same in words.</summary>
    public string Word => Window is null ? "rest not known" : Short is not null ? "short of rest" : Window.At(At) switch { RestState.Ready => "all rested", RestState.PartlyReady => "first wheat rested", _ => "resting" };

    /// <summary>Clean wheat running in, t/h.</summary>
    public double WheatPerHour => Queue.TonnesPerHourIn * (1 - WaterShare);

    /// <summary>Water of what ran in last as it runs, L/h at 1 kg to the litre: its share of water times the flow in.</summary>
    public double SeenLitresPerHour => 1000 * Queue.TonnesPerHourIn * WaterShare;

    /// <summary>Water the balance asks of what runs in, L/h at 1 kg to the litre; null where it cannot be said.</summary>
    public double? AskedLitresPerHour => Newest.Asked is TemperWater water ? WheatPerHour * water.KilogramsPerTonne : null;

    private double WaterShare => Newest.Content is { WheatTonnes: var wheat, WaterTonnes: var water } && wheat + water > 0 ? water / (wheat + water) : 0;
}
