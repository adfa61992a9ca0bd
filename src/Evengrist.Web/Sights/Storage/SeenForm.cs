using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Bins;
using Evengrist.Web.Sights.Bins;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Storage;

/// <summary>What a person saw of stored wheat, as typed: CO₂, live insects, air blown through; what is left empty was not looked at.</summary>
public sealed class SeenForm
{
    /// <summary>Made with the form, so that the same form sent twice is one.</summary>
    public string? Key { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>ppm.</summary>
    public string? CarbonDioxide { get; set; }

    /// <summary>Live weevils in the sample.</summary>
    public string? Weevils { get; set; }

    /// <summary>Other live insects in the sample.</summary>
    public string? Others { get; set; }

    /// <summary>Hours of air.</summary>
    public string? Hours { get; set; }

    /// <summary>m³/min for each tonne.</summary>
    public string? Airflow { get; set; }

    /// <summary>How it was read or sampled, why air was blown.</summary>
    public string? Words { get; set; }

    /// <summary>Records it under the visitor's name; every fault where it cannot be read.</summary>
    public IReadOnlyList<string> Record(string bin, Visit visit, out Receipt? receipt)
    {
        ArgumentNullException.ThrowIfNull(visit);
        receipt = null;
        var faults = new List<string>();
        if (visit.Read(At) is not { } at)
        {
            faults.Add("When: give the date and time, such as 14 January 2026 08:00.");
            at = default;
        }

        var seen = new RecordSeen(Key ?? "", bin, at)
        {
            CarbonDioxidePpm = (decimal?)TypedNumber.Read("CO₂, in ppm,", CarbonDioxide, faults, 0, 1_000_000), Insects = Found(faults), Aeration = Run(faults), Words = (Words ?? "").Trim(),
        };
        if (faults.Count == 0 && seen is { CarbonDioxidePpm: null, Insects: null, Aeration: null })
        {
            faults.Add("Nothing was given: fill in the CO₂, both counts of insects, or the hours of air.");
        }

        if (string.IsNullOrWhiteSpace(Key) || visit.Name is null)
        {
            faults.Add(Visit.Nameless);
        }

        try
        {
            receipt = faults.Count > 0 ? null : seen.In(visit.Mill, visit.Name!);
        }
        catch (LedgerRefusal refusal)
        {
            faults.Add(visit.InMillTime(refusal.Message));
        }

        return faults;
    }

    private (int, int)? Found(List<string> faults)
    {
        var (weevils, others) = (Count("Live weevils", Weevils, faults), Count("Other live insects", Others, faults));
        if (string.IsNullOrWhiteSpace(Weevils) != string.IsNullOrWhiteSpace(Others))
        {
            faults.Add("Insects: give both counts, 0 where none was found; leave both empty where nobody looked.");
        }

        return weevils is { } w && others is { } o ? (w, o) : null;
    }

    private static int? Count(string what, string? text, List<string> faults)
    {
        var count = TypedNumber.Read($"{what}, counted in the sample,", text, faults, 0, 100_000);
        if (count is { } number && number != Math.Floor(number))
        {
            faults.Add($"{what} are counted: write a whole number; read \"{text}\".");
            return null;
        }

        return (int?)count;
    }

    private AerationRun? Run(List<string> faults)
    {
        var (hours, flow) = (TypedNumber.Read("The time of air, in hours,", Hours, faults, 0.1, 5_000), TypedNumber.Read("The airflow, in m³/min for each tonne,", Airflow, faults, 0.001, 10));
        if (hours is null && flow is not null)
        {
            faults.Add("The airflow is given without the hours: say how long air was blown.");
        }

        return hours is { } h ? new AerationRun(h, flow) : null;
    }
}
