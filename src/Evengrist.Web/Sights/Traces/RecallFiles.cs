using Evengrist.Plant.Prints;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Recall;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Traces;

/// <summary>A recall as files to print: the pack and the notices.</summary>
public static class RecallFiles
{
    /// <summary>Adds <c>/tracing/recall/pack.pdf</c>, which takes the fields of the page, and the notices of an issued recall.</summary>
    public static void MapRecallFiles(this IEndpointRouteBuilder app)
    {
        app.MapGet("/tracing/recall/pack.pdf", Pack).ExcludeFromDescription();
        app.MapGet("/tracing/recalls/{number}/notices.pdf", Notices).ExcludeFromDescription();
    }

    private static IResult Pack(HttpContext context, Visit visit, IClock clock, string? paper)
    {
        if (PaperSize.Find(paper) is not { } size)
        {
            return NoPaper(paper);
        }

        var asked = RecallVisit.Of(visit, context.Request.Query);
        return asked.Sight is not { } sight ? Bad(asked)
            : Results.File(
                RecallPackPdf.Pack(RecallNotice.Draft, sight.Outcome, sight.Net, sight.Deliveries, sight.Words, [.. sight.Outcome.Unknown.Select(u => RecallWords.Of(u, visit.Units, visit.Say))], Head(visit, clock), size),
                "application/pdf", $"recall-draft-{size.Name}.pdf");
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

    private static PrintHead Head(Visit visit, IClock clock) => new(visit.Settings.Name, visit.Settings.IsDemonstration, visit.Settings.Zone, visit.Units, clock.GetCurrentInstant());

    private static IResult NoPaper(string? paper) => Results.Problem($"\"{paper}\" is no paper that is printed on. Ask for a4 or letter.", statusCode: StatusCodes.Status400BadRequest, title: "No such paper");

    private static IResult Bad(RecallVisit asked) => Results.Text(asked.Faults.Count > 0 ? string.Join("\n", asked.Faults) : "Say what is suspect: add ?what=", statusCode: StatusCodes.Status400BadRequest);
}
