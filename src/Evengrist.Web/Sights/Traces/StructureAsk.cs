using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Tracing.Structure;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>What is typed on the page of lot structure; what is left empty is taken from the records or assumed, and the page says which.</summary>
public sealed class StructureAsk
{
    private readonly IQueryCollection query;
    private readonly List<string> faults = [];

    /// <summary>Reads the address.</summary>
    public StructureAsk(IQueryCollection query, Visit visit)
    {
        ArgumentNullException.ThrowIfNull(query);
        ArgumentNullException.ThrowIfNull(visit);
        this.query = query;
        Until = Day("until", visit) is { } until ? visit.Zone.AtStartOfDay(until.PlusDays(1)).ToInstant() : visit.AsOf;
        From = Day("from", visit) is { } from ? visit.Zone.AtStartOfDay(from).ToInstant() : Until - Duration.FromDays(180);
        Threshold = (decimal)(Number("kg", 0, 1_000_000) ?? 0);
        if (faults.Count == 0 && Until <= From)
        {
            faults.Add("The span ends before it begins: give an earlier first day, or a later last one.");
        }
    }

    /// <summary>First moment of the span.</summary>
    public Instant From { get; }

    /// <summary>Its end.</summary>
    public Instant Until { get; }

    /// <summary>Kilograms of a truck up to which a package does not count.</summary>
    public decimal Threshold { get; }

    /// <summary>What is wrong with what was typed, each a sentence.</summary>
    public IReadOnlyList<string> Faults => faults;

    /// <summary>What was typed into a field.</summary>
    public string this[string field] => query.Typed(field) ?? "";

    /// <summary>The way typed in over what the records say.</summary>
    public StructureSpec Over(StructureSpec records)
    {
        ArgumentNullException.ThrowIfNull(records);
        var spec = records with
        {
            BinKilograms = 1000 * Number("bin", 0.001, 1e6) ?? records.BinKilograms, BinsPerMix = (int)(Number("bins", 1, 20) ?? records.BinsPerMix), LotKilograms = 1000 * Number("lot", 0.001, 1e6) ?? records.LotKilograms,
            Yield = Number("yield", 1, 100) / 100 ?? records.Yield, HeelKilograms = 1000 * Number("heel", 0, 1e6) ?? records.HeelKilograms, FlushKilograms = 1000 * Number("flush", 0, 1e6) ?? records.FlushKilograms,
            CleanEveryLots = (int)(Number("clean", 0, 5000) ?? records.CleanEveryLots), HoursEachCleanOut = Number("hours", 0, 1000) ?? records.HoursEachCleanOut,
            Order = this["order"] == "turn" ? BinOrder.InTurn : BinOrder.OneAfterAnother, Emptying = this["emptying"] == "stirred" ? Outflow.Stirred : Outflow.FirstInFirstOut,
        };
        if (faults.Count == 0)
        {
            faults.AddRange(spec.Faults());
        }

        return spec;
    }

    private LocalDate? Day(string field, Visit visit)
    {
        var text = this[field].Trim();
        if (text.Length == 0)
        {
            return null;
        }

        if (NodaTime.Text.LocalDatePattern.Iso.Parse(text) is { Success: true, Value: var day } && day.Year is > 1900 and < 2200)
        {
            return day;
        }

        faults.Add($"“{text}” is no day. Write it like {visit.AsOf.InZone(visit.Zone).Date:R}.");
        return null;
    }

    private double? Number(string field, double least, double most)
    {
        var text = this[field].Trim().Replace(',', '.');
        if (text.Length == 0)
        {
            return null;
        }

        if (double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && number >= least && number <= most)
        {
            return number;
        }

        faults.Add(string.Create(CultureInfo.InvariantCulture, $"“{text}” is no number from {least:0.###} to {most:0.###}."));
        return null;
    }
}
