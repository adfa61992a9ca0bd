using System.Globalization;
using Evengrist.Laboratory.Watch;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A bias that a person set in an instrument, as typed; on the page and over HTTP.</summary>
public sealed class BiasForm
{
    /// <summary>Code of the instrument.</summary>
    public string? Instrument { get; set; }

    /// <summary>A <see cref="Property"/> by name.</summary>
    public string? What { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>The bias before.</summary>
    public string? Old { get; set; }

    /// <summary>The bias from then on.</summary>
    public string? New { get; set; }

    /// <summary>On how many pairs it rests.</summary>
    public string? Pairs { get; set; }

    /// <summary>Why.</summary>
    public string? Reason { get; set; }

    /// <summary>Keeps it; every fault where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="now">The present moment.</param>
    public IReadOnlyList<string> Keep(Mill mill, Instant? at, string? by, string nameless, Instant now)
    {
        var faults = new List<string>();
        var (old, next) = (Read("The old bias", Old, faults), Read("The new bias", New, faults));
        if (!int.TryParse(Pairs, NumberStyles.None, CultureInfo.InvariantCulture, out var pairs))
        {
            faults.Add($"How many pairs it rests on is a whole number; read \"{Pairs}\".");
        }

        faults.AddRange(EntryFaults.Of("-", at, by, nameless));
        return faults.Count > 0 ? faults : InstrumentBiases.Keep(mill, new BiasSetting((Instrument ?? "").Trim(), TypedProperty.Read(What), at!.Value, old, next, pairs, (Reason ?? "").Trim()), by!, now);
    }

    private static decimal Read(string words, string? text, List<string> faults)
    {
        if (decimal.TryParse(text?.Trim(), NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            return value;
        }

        faults.Add($"{words} is a number with a point as decimal mark; read \"{text}\".");
        return 0;
    }
}
