using System.ComponentModel;
using Evengrist.Laboratory.Samples;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Samples and results of the laboratory over HTTP.</summary>
internal static class LabBenchApi
{
    /// <summary>Adds showing, taking and entering.</summary>
    public static void MapLabBench(this RouteGroupBuilder lab)
    {
        lab.MapGet("samples", Samples).WithSummary($"Samples due by the plan, taken and tested, of the last {BenchSight.Days} days").Produces<LabSampleAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapPost("samples", Take).WithSummary("Record that a sample was taken; say who with ?by=")
            .WithDescription("Texts as a person types them: code, place, at (mill time or with an offset; now when left out), line of the plan, or tests as Protein by NIR; Ash by furnace; remark. The same sample again is the same.")
            .Produces<LabSampleAnswer>(StatusCodes.Status201Created).Produces<LabSampleAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapPost("results", Enter).WithSummary("Enter results of a sample; they stand beside earlier ones; say who with ?by=")
            .WithDescription("key, sample, measured (now when left out), rows of what, method, instrument, values (a blank between duplicates), unit, basis (14mb, dry, or as is), and reason where something is asked. The same key again is the same entry. What is asked about comes back with questions: send it again with a reason.")
            .Produces<LabSampleAnswer>(StatusCodes.Status201Created).Produces<LabSampleAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static IResult Samples(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var plan = KeepLabPlan.Newest(door.Mill!).Plan;
        return Results.Ok(door.Mill!.Ask(view => PlannedSample.Of(plan, view.Book, at).Select(p => LabSampleAnswer.Of(p, at))
            .Concat(TakenSample.Within(view.Book, at - Duration.FromDays(BenchSight.Days), at).Select(LabSampleAnswer.Of)).ToArray()));
    }

    private static IResult Take(MillDoor door, IClock clock, TakeForm form, [Description("Who took it; demanded.")] string? by)
    {
        var faults = form.Record(door.Mill!, ApiMoment.OrNow(form.At, door.Mill!.Settings, clock), by?.Trim(), "Say who took it: add ?by=", out var receipt);
        return receipt is null ? MixApi.Refuse(faults) : Answer(door, form.Code!, receipt.Added > 0);
    }

    private static IResult Enter(MillDoor door, IClock clock, BenchForm form, [Description("Who enters them; demanded.")] string? by)
    {
        var objections = form.Record(door.Mill!, ApiMoment.OrNow(form.Measured, door.Mill!.Settings, clock), by?.Trim(), "Say who enters them: add ?by=", out var receipt);
        return receipt is not null ? Answer(door, form.Sample!, receipt.Added > 0)
            : objections.Any(o => !o.IsQuestion) ? MixApi.Refuse([.. objections.Select(o => o.Words)])
            : Results.Problem(string.Join(" ", objections.Select(o => o.Words)), statusCode: StatusCodes.Status409Conflict, title: "Asked about: send it again with a reason", extensions: new Dictionary<string, object?> { ["questions"] = objections.Select(o => o.Words).ToArray() });
    }

    private static IResult Answer(MillDoor door, string code, bool isNew) => Results.Json(
        LabSampleAnswer.Of(door.Mill!.Ask(view => TakenSample.Find(view.Book, code, Instant.MaxValue))!), statusCode: isNew ? StatusCodes.Status201Created : StatusCodes.Status200OK);
}
