using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Results of a sample as typed; on the bench and over HTTP.</summary>
public sealed class BenchForm
{
    /// <summary>Made with the form, so that the same form sent twice is one.</summary>
    public string? Key { get; set; }

    /// <summary>Number of the sample.</summary>
    public string? Sample { get; set; }

    /// <summary>When it was measured, by the mill's clock.</summary>
    public string? Measured { get; set; }

    /// <summary>Why what was asked about is taken.</summary>
    public string? Reason { get; set; }

    /// <summary>One for each test; none where the form came without them.</summary>
    public List<BenchRow> Rows { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    /// <summary>Records them; every objection where they cannot be, or where something is asked that no reason answers yet.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="measured">When, as read; null where it could not be.</param>
    /// <param name="by">Who; null or empty where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <param name="receipt">What became of them; null where they were not recorded.</param>
    public IReadOnlyList<Objection> Record(Mill mill, Instant? measured, string? by, string nameless, out Receipt? receipt)
    {
        ArgumentNullException.ThrowIfNull(mill);
        receipt = null;
        var faults = new List<string>();
        var typed = Rows.Where(r => r.IsTyped).ToArray();
        var moisture = Moisture(mill, typed);
        ResultEntry[] entries = [.. typed.Select(r => r.Read(moisture, faults)).OfType<ResultEntry>()];
        faults.AddRange(EntryFaults.Of(Key, measured, by, nameless));
        if (faults.Count > 0)
        {
            return [.. faults.Select(f => new Objection(f, false))];
        }

        try
        {
            (receipt, var objections) = new EnterResults(Key!, (Sample ?? "").Trim(), entries, measured!.Value, Reason ?? "").In(mill, by!);
            return receipt is null ? objections : [];
        }
        catch (LedgerRefusal refusal)
        {
            return [new Objection(refusal.Message, false)];
        }
    }

    // What is typed beside it comes first; else what was read on the sample.
    private decimal? Moisture(Mill mill, IEnumerable<BenchRow> typed)
    {
        var now = typed.FirstOrDefault(r => r.WhatRead == Property.Moisture) is { } row ? TypedValues.Read("Moisture", row.Values, new List<string>()) : [];
        return now.Count > 0 ? now.Average()
            : mill.Ask(view => TakenSample.Find(view.Book, Sample ?? "", Instant.MaxValue))?.Readings.LastOrDefault(r => r.What == Property.Moisture)?.Value;
    }
}
