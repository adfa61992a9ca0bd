using System.ComponentModel;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Packing;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Net content over HTTP.</summary>
public static class ContentApi
{
    /// <summary>Adds the questions about net content.</summary>
    public static void MapContentApi(this IEndpointRouteBuilder app)
    {
        var content = app.MapGroup("/api/packing/content").WithTags("Packing");
        content.MapGet("", Stands).WithSummary($"How the packages of each line and product stand against their label, by the checkweighers of the last {ContentStand.Days} days").Produces<ContentStandAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        content.MapPosed<NetContentAnswer>("check", CheckAsync, NetContentCase.Help, "Posed net weights against their label by the rules of the United States or the European Union, and the fill that keeps them; releases nothing, needs no records");
        content.MapPost("file", (Delegate)FileAsync).WithSummary("A checkweigher's file, all or none; ?look=true says what would be and keeps nothing; say who with ?by=, and ?reason= where something is asked; ?called= says what its own headings mean")
            .WithDescription($"One row for each package; the same rows again add nothing: {WeighingColumns.Example}").Accepts<object>("text/csv").Produces<WeighingAnswer>(StatusCodes.Status201Created).Produces<WeighingAnswer>()
            .ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
        content.MapPost("tares", Tare).WithSummary("Keep empty packages weighed by hand; say who with ?by=").WithDescription("product, at (mill time or with an offset; now when left out), weights (grams, blanks between), delivery")
            .Produces(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        content.MapGet("inspections", (MillDoor door) => Results.Ok(ContentInspections.All(door.Mill!).Select(InspectionAnswer.Of).ToArray())).WithSummary("Inspections that were signed, the newest first").Produces<InspectionAnswer[]>();
        content.MapGet("inspections/{number}", (MillDoor door, string number) => ContentInspections.Find(door.Mill!, number) is { } found ? Results.Ok(InspectionAnswer.Of(found)) : Results.Problem($"No inspection {number} is kept.", statusCode: StatusCodes.Status404NotFound, title: "No such inspection"))
            .WithSummary("One inspection").Produces<InspectionAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
        content.MapPost("inspections", Inspect).WithSummary("Sign an inspection; say who signs with ?by=. What is odd comes back with questions: send it again with a reason. The same once more is the same")
            .WithDescription("Texts as a person types them: law (US or EU), product, lot (packages in it), lotWords, gross and second (grams, blanks between), tare (grams), tareFrom, spoils (true where packages were opened), sampledBy, at, remark, reason")
            .Produces<InspectionAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static IResult Stands(MillDoor door, IClock clock, [Description("US or EU; EU when left out")] string? law, [Description("what a tonne is worth")] string? price, [Description("allowance for drift, g")] string? drift,
        [Description("moisture when packed, %")] string? packed, [Description("moisture when sold, %")] string? sold, [Description("packages in the lot; those of the last hour when left out")] string? lot, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        var (options, faults) = new ContentAsk(law, price, drift, packed, sold, lot).Read();
        return faults.Count > 0 ? MixApi.Refuse(faults, "Not reckoned") : Results.Ok(ContentStand.All(door.Mill!, options, at).Select(ContentStandAnswer.Of).ToArray());
    }

    private static Task<IResult> CheckAsync(HttpContext context) => Posed.ReplyAsync(context, NetContentCase.Read, NetContentAnswer.To);

    private static async Task<IResult> FileAsync(HttpContext context, MillDoor door, IClock clock)
    {
        var query = context.Request.Query;
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        body.Position = 0;
        var look = bool.TryParse(query["look"], out var asked) && asked;
        var form = new WeighingForm { Do = look ? "look" : "keep", Called = query["called"], Reason = query["reason"] };
        var kept = form.Act(door.Mill!, body, query["by"].ToString(), "Say who keeps it: add ?by=", Later(door, clock));
        return form.Faults.Count > 0 ? MixApi.Refuse(form.Faults)
            : kept is null && !look ? LabBenchApi.Questions(form.Questions)
            : Results.Json(new WeighingAnswer(form.Read!.Rows, form.Read.Hours.Count, kept?.Added ?? 0, kept?.Known ?? 0, [.. form.Questions]), statusCode: kept?.Added > 0 ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }

    private static IResult Tare(MillDoor door, IClock clock, TareForm form, [Description("Who weighed; demanded.")] string? by) =>
        form.Keep(door.Mill!, ApiMoment.OrNow(form.At, door.Mill!.Settings, clock), by, "Say who weighed: add ?by=", Later(door, clock)) is { Count: > 0 } faults ? MixApi.Refuse(faults) : Results.StatusCode(StatusCodes.Status201Created);

    private static IResult Inspect(MillDoor door, IClock clock, InspectionForm form, [Description("Who signs; demanded.")] string? by)
    {
        form.Do = "sign";
        var number = form.Act(door.Mill!, ApiMoment.OrNow(form.At, door.Mill!.Settings, clock), by, "Say who signs: add ?by=", Later(door, clock));
        return form.Faults.Count > 0 ? MixApi.Refuse(form.Faults) : number is null ? LabBenchApi.Questions(form.Questions)
            : Results.Json(InspectionAnswer.Of(ContentInspections.Find(door.Mill!, number)!.Value), statusCode: StatusCodes.Status201Created);
    }

    // The demonstration plays ahead of the clock.
    private static Instant Later(MillDoor door, IClock clock) => Instant.Max(clock.GetCurrentInstant(), door.Mill!.Settings.IsDemonstration ? door.Mill!.Ask(view => view.Book.Newest) ?? Instant.MinValue : Instant.MinValue);
}
