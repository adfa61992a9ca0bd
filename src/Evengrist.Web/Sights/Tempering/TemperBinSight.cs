using Evengrist.Ledger;
using Evengrist.Tempering;
using NodaTime;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>One temper bin on the board.</summary>
/// <param name="Place">The bin.</param>
/// <param name="Queue">What lies there in the order in which it went in.</param>
/// <param name="All">All that lies there.</param>
/// <param name="Newest">What ran in last; of this the water of the moment is judged.</param>
/// <param name="Next">What leaves next.</param>
/// <param name="NextTonnes">How much of it was looked at, t.</param>
/// <param name="Hardness">How hard most of its wheat is; none where its class is not known.</param>
/// <param name="Advice">The aim; null where the hardness is not known.</param>
/// <param name="Rest">The rest wanted; null where the hardness is not known.</param>
/// <param name="Temperature">The temperature read in it within a day, where none was typed; null otherwise.</param>
/// <param name="Window">When its wheat is ready; null where nothing lies there or no rest is known.</param>
/// <param name="EvaporationPercent">Evaporation to first break allowed for, per cent.</param>
/// <param name="At">The moment.</param>
public sealed record TemperBinSight(
    Place Place, TemperQueue Queue, TemperContent All, TemperContent Newest, TemperContent Next, double NextTonnes, Hardness Hardness, AimAdvice? Advice, RestCorrection? Rest, Reading? Temperature, RestWindow? Window,
    double EvaporationPercent, Instant At)
{
    /// <summary>Whether nothing lies there.</summary>
    public bool IsEmpty => Queue.FirstIn is null;

    /// <summary>How long the least rested of what leaves next has lain; null where nothing lies there.</summary>
    public Duration? LeastRested => (Queue.MixedUntil ?? Queue.FirstIn) is { } since ? At - since : null;

    /// <summary>By how much what leaves next is short of its rest; null where nothing runs out, no rest is known, or it is not short.</summary>
    public Duration? Short => Queue.TonnesPerHourOut > 0 && Rest is { } rest && LeastRested is { } lain && Duration.FromHours(rest.LongerHours) - lain is var missing && missing > Duration.Zero ? missing : null;

    /// <summary>Water of what ran in last as it runs, L/h at 1 kg to the litre: its share of water times the flow in.</summary>
    public double SeenLitresPerHour => Newest.WaterTonnes + Newest.WheatTonnes > 0 ? 1000 * Queue.TonnesPerHourIn * Newest.WaterTonnes / (Newest.WaterTonnes + Newest.WheatTonnes) : 0;

    /// <summary>Clean wheat running in, t/h.</summary>
    public double WheatPerHour => Newest.WaterTonnes + Newest.WheatTonnes > 0 ? Queue.TonnesPerHourIn * Newest.WheatTonnes / (Newest.WaterTonnes + Newest.WheatTonnes) : 0;

    /// <summary>Water the balance asks of what runs in, L/h at 1 kg to the litre; null where it cannot be said.</summary>
    public double? AskedLitresPerHour => Advice is { } advice && Newest.Asked(advice.Percent, EvaporationPercent) is TemperWater water ? WheatPerHour * water.KilogramsPerTonne : null;
}
