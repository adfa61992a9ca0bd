using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Plant.Prints;
using Evengrist.Records.Intake;
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

        var (shelf, settings, at) = (TradeShelf.Of(visit.Mill), visit.Settings, visit.AsOf);
        var sheet = visit.Mill.Ask(view => view.Book.Find(ticket) is { Kind: PlaceKind.Truck } truck
            ? TicketSheet.Of(view.Book, truck, at, shelf.Terms.Find, moment => Quantities.MillingDay.Of(moment, settings.Zone, settings.DayStart)) is { } found ? Told(found, shelf.Reader(view, at).Look(truck)) : null
            : null);
        if (sheet is null)
        {
            return Results.NotFound();
        }

        var head = new PrintHead(settings.Name, settings.IsDemonstration, settings.Zone, visit.Units, clock.GetCurrentInstant());
        return Results.File(TicketPdf.Write(sheet, head, size), "application/pdf", $"ticket-{sheet.Number}-{size.Name}.pdf");
    }

    // Nobody is paid by instruments without a certificate, nor at the prices of the example.
    private static TicketSheet Told(TicketSheet sheet, LoadFacts? load)
    {
        string[] against = [.. load?.NotForSettlement() ?? [], .. sheet.Contract == ExampleContract.Terms.Title ? ["The contract is an example; it is nobody's present price."] : Array.Empty<string>()];
        return against.Length == 0 ? sheet : sheet with { NotForSettlement = string.Join(" ", against) };
    }
}
