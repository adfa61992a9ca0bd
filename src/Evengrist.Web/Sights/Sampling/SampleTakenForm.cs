using System.Globalization;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Records.Intake;
using Evengrist.Web.Sights.Trucks;
using Evengrist.Web.Visiting;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>A sample as a person writes it down on a ticket.</summary>
public sealed class SampleTakenForm
{
    /// <summary>Number of the newest fact that was seen on the ticket.</summary>
    public long? Seen { get; set; }

    /// <summary>Code of the rule.</summary>
    public string? Pattern { get; set; }

    /// <summary>Probes or cuts.</summary>
    public string? Cuts { get; set; }

    /// <summary>The composite, kg.</summary>
    public string? Kilograms { get; set; }

    /// <summary>Number of the retained part; empty for none.</summary>
    public string? RetainedId { get; set; }

    /// <summary>Where it stands.</summary>
    public string? Shelf { get; set; }

    /// <summary>Until when it is kept.</summary>
    public string? KeepUntil { get; set; }

    /// <summary>When the sample was taken, mill time.</summary>
    public string? At { get; set; }

    /// <summary>The form filled in as usual for a truck.</summary>
    public static SampleTakenForm For(TruckSight truck, SamplingPolicy policy, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(truck);
        ArgumentNullException.ThrowIfNull(policy);
        ArgumentNullException.ThrowIfNull(visit);
        return new SampleTakenForm
        {
            Pattern = ProbePatterns.UsHopperBottom.Code, Cuts = policy.UsualProbes.ToString(CultureInfo.InvariantCulture), Kilograms = "2.0", RetainedId = $"R-{truck.Truck.Code}", Shelf = policy.Shelf,
            KeepUntil = LocalDatePattern.Iso.Format(truck.At.InZone(visit.Zone).Date.PlusDays(policy.KeepDays)), At = visit.Field(truck.At),
        };
    }

    /// <summary>Records it; the fault in words where it cannot be.</summary>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public string? Record(string ticket, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var typed = new Typed();
        var cuts = typed.Number("Cuts", Cuts, "probes", "how many probes or cuts");
        var kilograms = typed.Number("Kilograms", Kilograms, "kg", "the mass of the composite");
        var at = visit.Read(At);
        if (typed.Faults is [var (_, fault), ..])
        {
            return fault;
        }

        if (typed.Missing is [var missing, ..])
        {
            return $"Still needed: {missing}.";
        }

        if (at is not { } moment)
        {
            return $"“{At}” is no date and time. Choose when the sample was taken.";
        }

        if (cuts != decimal.Truncate(cuts!.Value) || cuts is < 1 or > 1000 || kilograms is <= 0 or > 100)
        {
            return "Probes are a whole number from 1 to 1000, and a composite weighs more than 0 and at most 100 kg.";
        }

        var id = (RetainedId ?? "").Trim();
        var taken = new SampleTaken(Pattern ?? "", (int)cuts.Value, (int)Math.Round(kilograms!.Value * 1000m), id, id.Length == 0 ? "" : (Shelf ?? "").Trim(), id.Length == 0 ? "" : (KeepUntil ?? "").Trim());
        if (taken.Faults() is [var wrong, ..])
        {
            return wrong;
        }

        new TakeSample(ticket, moment, taken) { Seen = Seen is { } seen ? new FactId(seen) : null }.In(visit.Mill, visit.Name!);
        return null;
    }
}
