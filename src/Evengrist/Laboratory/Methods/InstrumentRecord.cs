using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Methods;

/// <summary>What is known of a laboratory's instruments, as it bears on their readings: what is still to be applied to them, and whether the instrument was in check. See docs/model/methods.md.</summary>
/// <param name="instruments">The table.</param>
/// <param name="checks">Every check known by the moment that is looked from, in any order.</param>
/// <param name="zone">The mill's time zone: settings begin on its days.</param>
public sealed class InstrumentRecord(LabInstruments instruments, IEnumerable<InstrumentCheck> checks, DateTimeZone zone)
{
    private readonly ILookup<string, InstrumentCheck> checks = checks.OrderBy(c => c.At).ToLookup(c => c.Instrument, StringComparer.OrdinalIgnoreCase);
    private readonly Dictionary<(string Instrument, Instant At), string?> against = [];

    /// <summary>A laboratory that wrote down no instrument: nothing is applied and nothing speaks against a reading.</summary>
    public static InstrumentRecord None { get; } = new(LabInstruments.Start, [], DateTimeZone.Utc);

    /// <summary>How every instrument stands at a moment.</summary>
    /// <param name="at">The moment; later checks do not count.</param>
    public IReadOnlyList<InstrumentStanding> Standings(Instant at) => [.. instruments.Instruments.Select(i => InstrumentStanding.Of(i, checks[i.Code], at))];

    /// <summary>The setting that is to be applied here to a reading; null where the instrument applied its own or none is written down.</summary>
    public InstrumentCalibration? ToApply(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return instruments.Of(reading.Instrument)?.CalibrationOn(reading.What, reading.At.InZone(zone).Date) is { Applied: AppliedWhere.Here } setting ? setting : null;
    }

    /// <summary>Why a reading is not to carry a release by itself, in a sentence: its instrument was out of check or overdue when the sample was taken, or its next check failed. Null where nothing speaks against it, or no check is laid down.</summary>
    /// <remarks>The moment of the sample stands for that of the measurement, and a check that fails speaks against everything back to the last one that passed [common practice].</remarks>
    public string? Against(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (instruments.Of(reading.Instrument) is not { } instrument)
        {
            return null;
        }

        lock (against)
        {
            return against.TryGetValue((instrument.Code, reading.At), out var known) ? known : against[(instrument.Code, reading.At)] = Against(instrument, reading.At);
        }
    }

    private string? Against(LabInstrument instrument, Instant at)
    {
        if (InstrumentStanding.Of(instrument, checks[instrument.Code], at) is { NeedsReason: true } standing)
        {
            return $"{instrument.Code} was {standing.Doubt} on {at}: {standing.Why}";
        }

        return instrument.Tolerances.Select(t => (Tolerance: t, Next: checks[instrument.Code].FirstOrDefault(c => c.What == t.What && c.At > at))).FirstOrDefault(n => n.Next?.Passes(n.Tolerance) == false) is { Next: { } failed, Tolerance: var tolerance }
            ? string.Create(CultureInfo.InvariantCulture, $"{instrument.Code} failed its next check, on {failed.At}: {failed.Words}, allowed ±{tolerance.Within:0.###}.") : null;
    }
}
