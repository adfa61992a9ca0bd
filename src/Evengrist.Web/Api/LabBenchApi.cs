using System.ComponentModel;
using Evengrist.Laboratory.Samples;
using Evengrist.Plant.Cases;
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
        lab.MapPost("results/file", (Delegate)FileAsync).WithSummary("Results an instrument exported, all or none; ?look=true says what would be and records nothing; say who with ?by=, and ?reason= where something is asked")
            .WithDescription($"One row for each value; the same rows again add nothing: {LabResultColumns.Example}").Accepts<object>("text/csv").Produces<LabFileAnswer>(StatusCodes.Status201Created).Produces<LabFileAnswer>()
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static IResult Samples(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var (plan, instruments) = (KeepLabPlan.Newest(door.Mill!).Plan, InstrumentChecks.Record(door.Mill!, at));
        return Results.Ok(door.Mill!.Ask(view => PlannedSample.Of(plan, view.Book, at).Select(p => LabSampleAnswer.Of(p, at))
            .Concat(TakenSample.Within(view.Book, at - Duration.FromDays(BenchSight.Days), at).Select(s => LabSampleAnswer.Of(s, instruments))).ToArray()));
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
            : Questions([.. objections.Select(o => o.Words)]);
    }

    private static async Task<IResult> FileAsync(HttpContext context, MillDoor door)
    {
        using var reader = new StreamReader(context.Request.Body);
        var (query, look) = (context.Request.Query, bool.TryParse(context.Request.Query["look"], out var asked) && asked);
        var form = new LabFileForm { Text = await reader.ReadToEndAsync(context.RequestAborted), Do = look ? "look" : "keep", Reason = query["reason"] };
        var receipt = form.Act(door.Mill!, query["by"].ToString().Trim(), "Say who enters them: add ?by=");
        return form.Faults.Count > 0 ? MixApi.Refuse(form.Faults)
            : receipt is null && !look ? Questions(form.Questions)
            : Results.Json(new LabFileAnswer(form.Table!.Rows.Count, receipt?.Added ?? 0, receipt?.AlreadyKnown ?? 0, [.. form.Questions]), statusCode: receipt?.Added > 0 ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }

    /// <summary>What is asked about before anything is recorded.</summary>
    internal static IResult Questions(IReadOnlyList<string> questions) =>
        Results.Problem(string.Join(" ", questions), statusCode: StatusCodes.Status409Conflict, title: "Asked about: send it again with a reason", extensions: new Dictionary<string, object?> { ["questions"] = questions });

    private static IResult Answer(MillDoor door, string code, bool isNew) => Results.Json(
        LabSampleAnswer.Of(door.Mill!.Ask(view => TakenSample.Find(view.Book, code, Instant.MaxValue))!, InstrumentChecks.Record(door.Mill!, Instant.MaxValue)), statusCode: isNew ? StatusCodes.Status201Created : StatusCodes.Status200OK);
}

/// <summary>What became of a file of results.</summary>
/// <param name="Rows">Values read.</param>
/// <param name="Added">Values recorded.</param>
/// <param name="AlreadyKnown">Values that were recorded before and were not again.</param>
/// <param name="Questions">What was asked about.</param>
public sealed record LabFileAnswer(int Rows, int Added, int AlreadyKnown, string[] Questions);
