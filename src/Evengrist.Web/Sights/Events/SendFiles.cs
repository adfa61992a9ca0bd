using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Web.Api;
using Evengrist.Web.Visiting;
using Microsoft.AspNetCore.Mvc;

namespace Evengrist.Web.Sights.Events;

/// <summary>Sends a document from the page: it is downloaded and kept as sent in one act, so that what is kept is what went.</summary>
public static class SendFiles
{
    /// <summary>Adds the act.</summary>
    public static void MapSendFiles(this IEndpointRouteBuilder app) => app.MapPost("/ledger/events/send", Send).ExcludeFromDescription();

    private static IResult Send(Visit visit, [FromForm] string? code, [FromForm] string? from, [FromForm] string? until, [FromForm] string? outflow, [FromForm] string? to)
    {
        var (ask, faults) = ExportAsk.Read(code, from, until, outflow, to);
        string[] nobody = visit.Name is null ? [Visit.Nameless] : [], nowhere = string.IsNullOrWhiteSpace(to) ? [Earlier.Fault(to)!] : [];
        if (ask is null || nobody.Length + nowhere.Length > 0)
        {
            return MixApi.Refuse([.. faults, .. nowhere, .. nobody], "Not sent");
        }

        try
        {
            return EventFiles.Send(visit.Mill, ask, visit.Latest, visit.Name!);
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not sent");
        }
    }
}
