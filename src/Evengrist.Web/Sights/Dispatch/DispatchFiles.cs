using Evengrist.Packing.Dispatch;
using Evengrist.Plant.Tables;
using Evengrist.Records.Packing.Dispatch;
using Evengrist.Web.Visiting;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Dispatch;

/// <summary>Release records as a file to download.</summary>
public static class DispatchFiles
{
    /// <summary>Adds <c>/dispatch/releases.csv</c>; it takes the fields of the page of records.</summary>
    public static void MapDispatchFiles(this IEndpointRouteBuilder app) => app.MapGet("/dispatch/releases.csv", (Visit visit, string? from, string? until) =>
    {
        var ask = RecordsAsk.Of(from, until, visit.AsOf, visit.Zone);
        return ask.Faults.Count > 0 ? Results.Text(string.Join("\n", ask.Faults), statusCode: StatusCodes.Status400BadRequest)
            : Results.File(Csv(ReleaseRecords.Of(visit.Mill, ask.Begin, ask.End)).ToBytes(), "text/csv; charset=utf-8", $"releases-{LocalDatePattern.Iso.Format(ask.From)}-{LocalDatePattern.Iso.Format(ask.Until)}.csv");
    }).ExcludeFromDescription();

    /// <summary>A line for each lot of each release.</summary>
    internal static CsvText Csv(IEnumerable<ReleaseRecord> records)
    {
        var text = new CsvText().Line("load", "left", "consignee", "recipient", "recipient address", "recipient telephone", "food", "lot", "packed as", "quantity kg", "packages", "transporter", "transporter address", "transporter telephone", "trailer", "missing");
        foreach (var record in records)
        {
            string Item(string what) => record.Items.First(i => i.What == what).Text;
            foreach (var lot in record.Lots)
            {
                text.Line(record.Load, InstantPattern.ExtendedIso.Format(record.At), record.Consignee, Item("name of the recipient"), Item("address of the recipient"), Item("telephone of the recipient"), lot.Food, lot.Lot, lot.PackedAs, CsvText.Number(lot.Mass.Kilograms, 3),
                    string.Join(" ", lot.Packages), Item("name of the transporter"), Item("address of the transporter"), Item("telephone of the transporter"), Item("trailer"), string.Join("; ", record.Missing));
            }
        }

        return text;
    }
}
