using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Bins;

/// <summary>What a person saw of stored wheat beside its cables: CO₂ in the bin's air, live insects in a sample, air blown through it. Taken whole or not at all.</summary>
/// <param name="Key">The source's own key, so that the same entry sent twice is one.</param>
/// <param name="Bin">Code of the wheat bin.</param>
/// <param name="At">When it was read, sampled, or when the fans stopped.</param>
public sealed record RecordSeen(string Key, string Bin, Instant At)
{
    /// <summary>CO₂ in the bin's air, ppm by volume; null where not read.</summary>
    public decimal? CarbonDioxidePpm { get; init; }

    /// <summary>Live insects in a sample, both counts; null where nobody looked.</summary>
    public (int Weevils, int Others)? Insects { get; init; }

    /// <summary>Air that was blown through; null where none was.</summary>
    public AerationRun? Aeration { get; init; }

    /// <summary>How it was read or sampled, or why air was blown, in the recorder's words; may be empty.</summary>
    public string Words { get; init; } = "";

    /// <summary>Records it.</summary>
    /// <exception cref="LedgerRefusal">There is no such wheat bin, nothing was seen, or a value cannot be; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(
            view => view.Book.Named(Bin) is { Kind: PlaceKind.Bin } place ? [.. Drafts(place.Code)] : throw Malformed("what is seen of stored wheat is recorded on wheat bins."), by, "bin page", recorded);
    }

    private List<Draft> Drafts(string code)
    {
        var drafts = new List<Draft>();
        if (CarbonDioxidePpm is { } ppm)
        {
            drafts.Add(new Measure(Key + "/co2", code, At, Property.CarbonDioxide, ppm, "ppm", default, Words.Length > 0 ? Words : "air of the bin"));
        }

        if (Insects is { } found)
        {
            var how = Words.Length > 0 ? Words : "sample of the bin";
            drafts.Add(new Measure(Key + "/weevils", code, At, Property.LiveWeevils, found.Weevils, "/sample", default, how));
            drafts.Add(new Measure(Key + "/others", code, At, Property.OtherLiveInsects, found.Others, "/sample", default, how));
        }

        if (Aeration is { } run)
        {
            drafts.Add(new Happen(Key + "/air", code, At, HappeningKind.Aerated, run.Text(Words)));
        }

        return drafts.Count > 0 ? drafts : throw Malformed("nothing was seen: give the CO₂, both counts of insects, or the hours of air.");
    }

    private LedgerRefusal Malformed(string words) => new(LedgerRule.Malformed, $"{Bin}: {words}") { Place = Bin, At = At };
}
