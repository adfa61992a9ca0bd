using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Tempering;
using Evengrist.Tempering;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Tempering;

/// <summary>What a person did at a temper bin, or notes of it, as typed; on the page and over HTTP.</summary>
public sealed class TemperActForm
{
    /// <summary>Of <see cref="What"/>: a note for those who come after.</summary>
    public const string Note = "Note";

    /// <summary>Made with the form, so that the same form sent twice is one.</summary>
    public string? Key { get; set; }

    /// <summary>A <see cref="TemperAct"/> by name, or <c>Note</c>.</summary>
    public string? What { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>t/h.</summary>
    public string? Wheat { get; set; }

    /// <summary>L/h.</summary>
    public string? Water { get; set; }

    /// <summary>Why, in the person's words; a note's words.</summary>
    public string? Words { get; set; }

    /// <summary>Records it; every fault where it cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="bin">Code of the temper bin.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="receipt">What became of it; null where there is a fault.</param>
    public IReadOnlyList<string> Record(Mill mill, string bin, Instant? at, string? by, string nameless, out Receipt? receipt)
    {
        ArgumentNullException.ThrowIfNull(mill);
        receipt = null;
        var (faults, words) = (new List<string>(), (Words ?? "").Trim());
        var act = Enum.TryParse<TemperAct>(What, out var named) && named.ToString() == What ? named : TemperAct.None;
        var entry = new TemperEntry(act, TypedNumber.Read("Wheat, t/h", Wheat, faults, 0, TemperEntry.MostTonnesPerHour), TypedNumber.Read("Water, L/h", Water, faults, 0, TemperEntry.MostLitresPerHour));
        if (What != Note)
        {
            faults.AddRange(faults.Count > 0 || at is null ? [] : entry.Faults());
        }
        else if (words.Length == 0)
        {
            faults.Add("A note has words: write what those who come after should know.");
        }

        faults.AddRange(EntryFaults.Of(Key, at, by, nameless));
        if (faults.Count > 0)
        {
            return faults;
        }

        try
        {
            receipt = What == Note ? mill.Record([new Happen(Key!, bin, at!.Value, HappeningKind.Note, words)], by!, "tempering") : new EnterTemper(Key!, bin, entry, at!.Value, words).In(mill, by!);
        }
        catch (LedgerRefusal refusal)
        {
            faults.Add(refusal.Message);
        }

        return faults;
    }
}
