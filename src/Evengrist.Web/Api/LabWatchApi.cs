using System.ComponentModel;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Start;
using Evengrist.Web.Visiting;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Meter or wheat, validation and many mills over HTTP.</summary>
internal static class LabWatchApi
{
    /// <summary>Adds the posed cases, the ledger's pairs, and biases.</summary>
    public static void MapLabWatch(this RouteGroupBuilder lab)
    {
        lab.MapPosed<LabWatchAnswer>("watch", WatchAsync, LabWatchCase.Help, "Whether the instrument moved, the flour, both or nothing, by posed pairs of reference and instrument; start, size and how many pairs more; sets no bias, needs no records");
        lab.MapPosed<LabValidateAnswer>("validate", ValidateAsync, LabValidateCase.Help, "Bias, slope and error of an instrument against reference results, each with its test, and what to set; sets nothing, needs no records");
        lab.MapPosed<LabMillsAnswer>("mills", MillsAsync, LabMillsCase.Help, "Mills beside each other on one property: capability as reported and of the flour, each laboratory's bias by ring tests, the worst first; decides nothing, needs no records");
        lab.MapGet("watch", Watch).WithSummary("The ledger's pairs of an instrument judged as of a moment: what can be watched, the pairs with their moments, the verdict")
            .WithDescription("watch (a key of choices; the first when left out), span (minutes between two readings, 0), from, reference, pair (standard deviations), quiet, k, h: as on the page.")
            .Produces<LabWatchedAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("biases", (MillDoor door) => InstrumentBiases.All(door.Mill!).Select(LabBiasAnswer.Of).ToArray()).WithSummary("Biases set in instruments, the newest first").Produces<LabBiasAnswer[]>();
        lab.MapPost("biases", Bias).WithSummary("Record a bias that was set in an instrument; say who with ?by=")
            .WithDescription("Texts as a person types them: instrument, what (Protein …), at (mill time or with an offset; now when left out), old, new, pairs, reason. It changes no reading.")
            .Produces<LabBiasAnswer[]>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Watch(HttpContext context, MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var ask = WatchAsk.Of(context.Request.Query.Typed);
        var from = ask.From.Length > 0 ? ApiMoment.Read(ask.From, door.Mill!.Settings, clock) : null;
        if (ask.From.Length > 0 && from is null)
        {
            return ApiMoment.Bad(ask.From);
        }

        var sight = WatchSight.Of(door.Mill!, ask, from, at);
        return ask.Fields.Faults.Count > 0 ? MixApi.Refuse([.. ask.Fields.Faults]) : Results.Ok(LabWatchedAnswer.Of(sight));
    }

    private static IResult Bias(MillDoor door, IClock clock, BiasForm form, [Description("Who set it; demanded.")] string? by)
    {
        var faults = form.Keep(door.Mill!, ApiMoment.OrNow(form.At, door.Mill!.Settings, clock), by?.Trim(), "Say who set it: add ?by=", clock.GetCurrentInstant());
        return faults.Count > 0 ? MixApi.Refuse(faults) : Results.Json(InstrumentBiases.All(door.Mill!).Select(LabBiasAnswer.Of).ToArray(), statusCode: StatusCodes.Status201Created);
    }

    private static Task<IResult> WatchAsync(HttpContext context) => Posed.ReplyAsync(context, LabWatchCase.Read, LabWatchAnswer.To);

    private static Task<IResult> MillsAsync(HttpContext context) => Posed.ReplyAsync(context, LabMillsCase.Read, LabMillsAnswer.To);

    private static Task<IResult> ValidateAsync(HttpContext context) => Posed.ReplyAsync(context, LabValidateCase.Read, LabValidateAnswer.To);
}
