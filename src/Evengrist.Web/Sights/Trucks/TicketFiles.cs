using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Plant.Prints;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Tickets as files to print.</summary>
public static class TicketFiles
{
    /// <summary>Adds the file.</summary>
    public static void MapTicketFiles(this IEndpointRouteBuilder app) => app.MapGet("/intake/{ticket}/ticket.pdf", Pdf).ExcludeFromDescription();

    private static IResult Pdf(Visit visit, IClock clock, string ticket, string? paper)
    {
        if (PaperSize.Find(paper) is not { } size)
        {
            return Results.Problem($"\"{paper}\" is no paper that tickets are printed on. Ask for a4 or letter.", statusCode: StatusCodes.Status400BadRequest, title: "No such paper");
        }

        var (terms, settings, at) = (Terms.Of(visit.Mill), visit.Settings, visit.AsOf);
        var sheet = visit.Mill.Ask(view => view.Book.Find(ticket) is { Kind: PlaceKind.Truck } truck
            ? TicketSheet.Of(view.Book, truck, at, terms.Find, moment => Quantities.MillingDay.Of(moment, settings.Zone, settings.DayStart))
            : null);
        if (sheet is null)
        {
            return Results.NotFound();
        }

        // Nobody is paid at the prices of the example.
        var told = sheet.Contract == ExampleContract.Terms.Title ? sheet with { NotForSettlement = "The contract is an example; it is nobody's present price." } : sheet;
        var head = new PrintHead(settings.Name, settings.IsDemonstration, settings.Zone, visit.Units, clock.GetCurrentInstant());
        return Results.File(TicketPdf.Write(told, head, size), "application/pdf", $"ticket-{sheet.Number}-{size.Name}.pdf");
    }
}
