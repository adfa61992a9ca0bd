using Evengrist.Laboratory.Methods;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>Check samples read on the laboratory's instruments: papers, one version for each check of an instrument. None is ever changed.</summary>
public static class InstrumentChecks
{
    /// <summary>Every check with who kept it, by instrument, in the order they were kept.</summary>
    public static IReadOnlyList<(InstrumentCheck Check, string By)> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(InstrumentCheck.PaperKind).All().Read<InstrumentCheck>(InstrumentCheck.TryRead).Select(p => (p.Value, p.Paper.By))];
    }

    /// <summary>How every instrument of the laboratory stands at a moment.</summary>
    public static IReadOnlyList<InstrumentStanding> Standings(Mill mill, Instant at) => Record(mill, at).Standings(at);

    /// <summary>What is known of the laboratory's instruments at a moment, as it bears on their readings.</summary>
    public static InstrumentRecord Record(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return new(KeepLabInstruments.Newest(mill).Instruments, All(mill).Select(c => c.Check).Where(c => c.At <= at), mill.Settings.Zone);
    }

    /// <summary>Keeps a check; every fault where it cannot be, and then nothing is kept. The same check again is the same.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="check">The check.</param>
    /// <param name="by">Who made it.</param>
    /// <param name="now">The present moment: no check lies after it.</param>
    public static IReadOnlyList<string> Keep(Mill mill, InstrumentCheck check, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(check);
        var instrument = KeepLabInstruments.Newest(mill).Instruments.Of(check.Instrument);
        string[] faults =
        [
            .. check.Faults(),
            .. instrument is null ? [$"There is no instrument \"{check.Instrument}\" in the table. Add it first, or look for a typing error."] : Array.Empty<string>(),
            .. instrument is not null && instrument.ToleranceOf(check.What) is null ? [$"No tolerance for {check.What.Words()} is laid down for {instrument.Code}: a check could not be judged. Add it to the table first."] : Array.Empty<string>(),
            .. check.At > now ? [$"The check lies in the future: {check.At}."] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(by) ? ["Say who made the check."] : Array.Empty<string>(),
        ];
        if (faults.Length == 0)
        {
            mill.Papers(InstrumentCheck.PaperKind).KeepOnce(instrument!.Code, (check with { Instrument = instrument.Code }).ToJson(), by);
        }

        return faults;
    }
}
