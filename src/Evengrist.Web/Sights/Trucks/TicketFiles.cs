using Evengrist.Plant.Prints;
using Evengrist.Records.Intake;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Tickets as files to print.</summary>
public static class TicketFiles
{
    /// <summary>Adds the file.</summary>
    public static void MapTicketFiles(this IEndpointRouteBuilder app) => app.MapGet("/intake/{ticket}/ticket.pdf", Pdf).ExcludeFromDescription();

    private static IResult Pdf(Visit visit, string ticket, string? paper)
    {
        if (PaperSize.Find(paper) is not { } size)
        {
            return Results.Problem($"\"{paper}\" is no paper that tickets are printed on. Ask for a4 or letter.", statusCode: StatusCodes.Status400BadRequest, title: "No such paper");
        }

        if (PrintedTicket.Of(visit.Mill, ticket, visit.AsOf) is not { } sheet)
        {
            return Results.NotFound();
        }

        // Nobody is paid at the prices of the example.
        var told = sheet.Contract == ExampleContract.Terms.Title ? sheet with { NotForSettlement = $"The contract is an example; it is nobody's present price. {sheet.NotForSettlement}".TrimEnd() } : sheet;
        return Results.File(TicketPdf.Write(told, visit.Head, size), "application/pdf", $"ticket-{sheet.Number}-{size.Name}.pdf");
    }
}
