using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Streams;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Streams;

/// <summary>What was delivered or counted of an additive's lot, as typed; on the page and over HTTP.</summary>
public sealed class LotForm
{
    private const double MostKilograms = 1_000_000;

    /// <summary>Made with the form, so that the same form sent twice is one.</summary>
    public string? Key { get; set; }

    /// <summary>Code of the lot.</summary>
    public string? Lot { get; set; }

    /// <summary>What a new lot is of.</summary>
    public string? Additive { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>kg.</summary>
    public string? Kilograms { get; set; }

    /// <summary>±, k = 2, kg.</summary>
    public string? PlusMinus { get; set; }

    /// <summary>How it was found.</summary>
    public string? How { get; set; }

    /// <summary>Records it; every fault where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="receipt">What became of it; null where there is a fault.</param>
    public IReadOnlyList<string> Record(Mill mill, Instant? at, string? by, string nameless, out Receipt? receipt)
    {
        receipt = null;
        var faults = new List<string>();
        var (kilograms, plusMinus) = (TypedNumber.Read("What was found, kg,", Kilograms, faults, 0, MostKilograms, demanded: true), TypedNumber.Read("Its ±, kg,", PlusMinus, faults, 0, MostKilograms));
        if (string.IsNullOrWhiteSpace(Lot))
        {
            faults.Add("Lot: give the code on the bag or the maker's note.");
        }

        faults.AddRange(EntryFaults.Of(Key, at, by, nameless));
        if (faults.Count > 0)
        {
            return faults;
        }

        try
        {
            receipt = new CountLot(Key!, Lot!.Trim(), at!.Value, (decimal)kilograms!.Value, How ?? "") { Additive = Additive ?? "", StandardUncertainty = (decimal?)plusMinus / 2 }.In(mill, by!);
        }
        catch (LedgerRefusal refusal)
        {
            faults.Add(refusal.Message);
        }

        return faults;
    }
}
