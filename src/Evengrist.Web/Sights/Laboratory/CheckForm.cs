using Evengrist.Laboratory.Methods;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A check sample read on an instrument, as typed; on the page and over HTTP.</summary>
public sealed class CheckForm
{
    /// <summary>Code of the instrument.</summary>
    public string? Instrument { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>A <see cref="Property"/> by name.</summary>
    public string? What { get; set; }

    /// <summary>What the sample is known to have.</summary>
    public string? Known { get; set; }

    /// <summary>Readings, parted by blanks or semicolons.</summary>
    public string? Found { get; set; }

    /// <summary>Number or name of the check sample.</summary>
    public string? Sample { get; set; }

    /// <summary>Anything to remember.</summary>
    public string? Remark { get; set; }

    /// <summary>Keeps it; every fault where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The present moment.</param>
    public IReadOnlyList<string> Keep(Mill mill, Instant? at, string? by, string nameless, Instant now)
    {
        var faults = new List<string>();
        var known = TypedValues.Read("What the sample is known to have", Known, faults);
        var found = TypedValues.Read("The readings", Found, faults);
        faults.AddRange(EntryFaults.Of("-", at, by, nameless));
        if (known.Count > 1)
        {
            faults.Add("What the sample is known to have is one number.");
        }

        return faults.Count > 0 ? faults : InstrumentChecks.Keep(mill, new InstrumentCheck((Instrument ?? "").Trim(), at!.Value, TypedProperty.Read(What), known[0], found, (Sample ?? "").Trim(), (Remark ?? "").Trim()), by!, now);
    }
}
