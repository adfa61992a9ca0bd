using System.Globalization;
using Evengrist.Packing.Lines;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>What the mill means to make, as typed: a row for each campaign.</summary>
public sealed class CampaignForm
{
    private const int MostRows = 60;

    /// <summary>What is done: <see cref="LineBookForm.KeepIt"/>, or a change of rows.</summary>
    public string? Do { get; set; }

    /// <summary>The version it follows; 0 for the first.</summary>
    public string? Seen { get; set; }

    /// <summary>The campaigns.</summary>
    public List<CampaignRow> Rows { get; set => field = [.. (value ?? []).Where(r => r is not null)]; } = [];

    /// <summary>What is wrong, by field.</summary>
    internal Typed Typed { get; } = new();

    /// <summary>What is wrong with all of it.</summary>
    internal List<string> Faults { get; } = [];

    /// <summary>What is kept, as it is typed.</summary>
    internal static CampaignForm Of(MillCampaigns campaigns, int version, Func<Instant, string> field) => new()
    {
        Seen = version.ToString(CultureInfo.InvariantCulture), Rows = [.. campaigns.Campaigns.Select(c => new CampaignRow { Bin = c.Bin, From = field(c.From), Until = field(c.Until), Rate = TypedRows.Say(c.TonnesPerHour) })],
    };

    /// <summary>Adds or takes out a row, as the act says; a new one begins where the last ends.</summary>
    internal void ChangeRows()
    {
        var act = Do ?? "";
        if (act == "row+" && Rows.Count < MostRows)
        {
            Rows.Add(new() { From = Rows.Count > 0 ? Rows[^1].Until : "" });
        }
        else if (act.StartsWith("row-:", StringComparison.Ordinal) && TypedRows.At(act, Rows.Count) is >= 0 and var at)
        {
            Rows.RemoveAt(at);
        }
    }

    /// <summary>Keeps it as the next version; false with every fault where it cannot be, and then nothing is kept.</summary>
    internal bool Keep(Mill mill, HallKnown known, string? by, Func<string?, Instant?> read)
    {
        if (string.IsNullOrWhiteSpace(by))
        {
            Faults.Add(Visiting.Visit.Nameless);
        }

        MillCampaign[] campaigns = [.. Rows.Index().Where(r => !r.Item.IsEmpty).Select(r => Read(known, r.Item, $"Rows[{r.Index}].", read))];
        if (Typed.Faults.Count == 0 && Faults.Count == 0)
        {
            Faults.AddRange(KeepMillCampaigns.KeepAfter(mill, new MillCampaigns(campaigns), by!.Trim(), int.TryParse(Seen, NumberStyles.None, CultureInfo.InvariantCulture, out var seen) ? seen : -1));
        }

        return Typed.Faults.Count == 0 && Faults.Count == 0;
    }

    private MillCampaign Read(HallKnown known, CampaignRow row, string field, Func<string?, Instant?> read)
    {
        var bin = known.Bins.FirstOrDefault(b => b.Code.Equals((row.Bin ?? "").Trim(), StringComparison.OrdinalIgnoreCase));
        if (bin is null)
        {
            Typed.Fault(field + "Bin", string.IsNullOrWhiteSpace(row.Bin) ? "Choose the bin, or take the row out." : $"No flour bin {row.Bin.Trim()} feeds a line.");
        }

        var (from, until, rate) = (Moment(field + "From", row.From, read), Moment(field + "Until", row.Until, read), Typed.Number(field + "Rate", row.Rate, "t/h", 0, 500));
        if (until <= from)
        {
            Typed.Fault(field + "Until", "It ends after it begins. Are the two swapped?");
        }

        if (rate == 0)
        {
            Typed.Fault(field + "Rate", "A rate is above 0: take the row out where nothing is made.");
        }

        return new(bin?.Code ?? "", from ?? Instant.MinValue, until ?? Instant.MaxValue, rate ?? 1);
    }

    private Instant? Moment(string field, string? text, Func<string?, Instant?> read)
    {
        var moment = read(text);
        if (moment is null)
        {
            Typed.Fault(field, string.IsNullOrWhiteSpace(text) ? "Missing: a day and time of the mill." : $"“{text.Trim()}” is no day and time. Write it like 2026-01-14T06:00.");
        }

        return moment;
    }
}

/// <summary>A campaign as it was typed.</summary>
public sealed class CampaignRow
{
    /// <summary>Code of the flour bin.</summary>
    public string? Bin { get; set; }

    /// <summary>Begin, mill time.</summary>
    public string? From { get; set; }

    /// <summary>End, mill time.</summary>
    public string? Until { get; set; }

    /// <summary>How much is made, t/h.</summary>
    public string? Rate { get; set; }

    internal bool IsEmpty => string.IsNullOrWhiteSpace(Bin) && string.IsNullOrWhiteSpace(Rate) && string.IsNullOrWhiteSpace(Until);
}
