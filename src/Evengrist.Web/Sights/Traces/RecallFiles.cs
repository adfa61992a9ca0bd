using System.Globalization;
using System.Text;
using Evengrist.Ledger;
using Evengrist.Plant.Prints;
using Evengrist.Plant.Tables;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Recall;
using Evengrist.Web.Visiting;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A recall as files: the pack and the notices to print, the packages for programs.</summary>
public static class RecallFiles
{
    private static readonly ZonedDateTimePattern Time = ZonedDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:sso<g>", null);

    /// <summary>Adds <c>/tracing/recall/pack.pdf</c> and <c>packages.csv</c>, which take the fields of the page, and the notices of an issued recall.</summary>
    public static void MapRecallFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/tracing/recall/pack.pdf", Pack).ExcludeFromDescription();
        app.MapGet("/tracing/recall/packages.csv", Csv).ExcludeFromDescription();
        app.MapGet("/tracing/recalls/{number}/notices.pdf", Notices).ExcludeFromDescription();
    }

    private static IResult Pack(HttpContext context, Visit visit, IClock clock, string? paper)
    {
        var asked = RecallVisit.Of(visit, context.Request.Query);
        if (PaperSize.Find(paper) is not { } size)
        {
            return NoPaper(paper);
        }

        return asked.Sight is not { } sight ? Bad(asked)
            : Results.File(
                RecallPackPdf.Pack(RecallNotice.Draft, sight.Outcome, sight.Net, sight.Deliveries, sight.Words, [.. sight.Outcome.Unknown.Select(u => RecallWords.Of(u, visit.Units))], Head(visit, clock), size),
                "application/pdf", $"recall-draft-{size.Name}.pdf");
    }

    private static IResult Csv(HttpContext context, Visit visit)
    {
        var asked = RecallVisit.Of(visit, context.Request.Query);
        return asked.Sight is not { } sight ? Bad(asked)
            : Results.File(Encoding.UTF8.GetPreamble().Concat(Encoding.UTF8.GetBytes(Text(sight, visit.Zone))).ToArray(), "text/csv; charset=utf-8", "recall-packages.csv");
    }

    private static IResult Notices(Visit visit, IClock clock, string number, string? paper, string? customer)
    {
        if (PaperSize.Find(paper) is not { } size)
        {
            return NoPaper(paper);
        }

        if (Recalls.Find(visit.Mill, number) is not { } recall)
        {
            return Results.NotFound();
        }

        var deliveries = visit.Mill.Ask(view => Delivery.Of(view.Book, recall.Packages.Select(view.Book.Named).Select(p => p.Id), recall.At))
            .Where(d => string.IsNullOrWhiteSpace(customer) || d.Customer.Code.Equals(customer.Trim(), StringComparison.OrdinalIgnoreCase)).ToArray();
        return deliveries.Length == 0
            ? Results.Problem($"Nothing of {recall.Number} had gone to {(string.IsNullOrWhiteSpace(customer) ? "a customer" : customer)} when it was issued: there is nobody to tell.", statusCode: StatusCodes.Status404NotFound, title: "No notice")
            : Results.File(RecallPackPdf.Notices(RecallNotice.Of(recall), deliveries, Head(visit, clock), size), "application/pdf", $"{recall.Number}-notices-{size.Name}.pdf");
    }

    private static string Text(RecallSight sight, DateTimeZone zone)
    {
        var text = new CsvText();
        text.Line(["package", "kind", "product", "made", "mass [kg]", "least [kg]", "expected [kg]", "most [kg]", .. sight.Outcome.Beliefs.Select(b => b.Outflow.Words() + " [kg]"),
            "least, any outflow [kg]", "most, any outflow [kg]", "chance over threshold [%]", "where now", "left", "on hold"]);
        foreach (var p in sight.Net.Packages)
        {
            text.Line([p.Place.Code, p.Place.Kind.Words(), p.Place.Material, Say(p.Made), Kg(p.Mass.Grams), Kg(p.Grams.Least), Kg(p.Grams.Expected), Kg(p.Grams.Most), .. p.Grams.Each.Select(Kg),
                Kg(p.Bound.Least), Kg(p.Bound.Most), (100 * p.Chance).ToString("F1", CultureInfo.InvariantCulture), p.Where?.Code ?? "in stock", p.Left is { } left ? Say(left) : "", p.Hold?.Words ?? ""]);
        }

        return text.ToString();

        string Say(Instant at) => Time.Format(at.InZone(zone));
    }

    private static PrintHead Head(Visit visit, IClock clock) => new(visit.Settings.Name, visit.Settings.IsDemonstration, visit.Settings.Zone, visit.Units, clock.GetCurrentInstant());

    private static string Kg(double grams) => (grams / 1000).ToString("F3", CultureInfo.InvariantCulture);

    private static IResult NoPaper(string? paper) => Results.Problem($"\"{paper}\" is no paper that is printed on. Ask for a4 or letter.", statusCode: StatusCodes.Status400BadRequest, title: "No such paper");

    private static IResult Bad(RecallVisit asked) => Results.Text(asked.Faults.Count > 0 ? string.Join("\n", asked.Faults) : "Say what is suspect: add ?what=", statusCode: StatusCodes.Status400BadRequest);
}
