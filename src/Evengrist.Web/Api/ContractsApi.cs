using System.ComponentModel;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Records.Intake;
using Evengrist.Web.Start;

namespace Evengrist.Web.Api;

/// <summary>Contracts over HTTP: those kept, and a further version.</summary>
internal static class ContractsApi
{
    /// <summary>Adds both.</summary>
    public static void MapContracts(this RouteGroupBuilder intake)
    {
        intake.MapGet("contracts", (MillDoor door) => Results.Content($"[{string.Join(",", TermsShelf.Of(door.Mill!).All.Select(TermsJson.Write))}]", "application/json"))
            .WithSummary("Every version of every contract, by code, the newest first").Produces<object[]>();
        intake.MapPost("contracts", (Delegate)KeepAsync).WithSummary("Keep a version of a contract with its scales; a version once kept never changes")
            .Accepts<object>("application/json").Produces(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static async Task<IResult> KeepAsync(HttpContext context, MillDoor door, [Description("Who agreed it; demanded.")] string? by)
    {
        // A page elsewhere can make a browser send text, or bytes of no type at all, but not JSON.
        if (!context.Request.HasJsonContentType())
        {
            return Results.Problem("Send the contract as application/json.", statusCode: StatusCodes.Status415UnsupportedMediaType, title: "Not kept");
        }

        using var reader = new StreamReader(context.Request.Body);
        var read = TermsJson.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var terms, out var faults);
        if (!read || string.IsNullOrWhiteSpace(by))
        {
            string[] all = [.. faults, .. string.IsNullOrWhiteSpace(by) ? ["Say who agreed it: add ?by="] : Array.Empty<string>()];
            return Results.Problem(string.Join(" ", all), statusCode: StatusCodes.Status400BadRequest, title: "Not kept", extensions: new Dictionary<string, object?> { ["faults"] = all });
        }

        try
        {
            door.Mill!.Keep(terms!, by.Trim());
        }
        catch (LedgerRefusal refusal)
        {
            return Results.Problem(refusal.Message, statusCode: StatusCodes.Status409Conflict, title: "Not kept");
        }

        return Results.Created($"/intake/contracts?code={Uri.EscapeDataString(terms!.Title)}", new { terms.Code, terms.Version });
    }
}
