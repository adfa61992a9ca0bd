using System.ComponentModel;
using System.Text;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Prints.Labels;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Packing;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Codes and labels over HTTP.</summary>
public static class LabelsApi
{
    private const string Example = """{"elements":{"01":"09521234002017","10":"WB-251007-3"},"prefixLength":7,"part":false}""";

    /// <summary>Adds reading, making and labelling.</summary>
    public static void MapLabelsApi(this IEndpointRouteBuilder app)
    {
        var gs1 = app.MapGroup("/api/gs1").WithTags("Packing");
        gs1.MapGet("parse", Parse).WithSummary("What a scanned or typed text says, every fault with its place, and where in the ledger it leads").Produces<ScanAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        gs1.MapPost("make", (Delegate)MakeAsync).WithSummary("Elements put together: as a scanner sends them, with brackets, as a link and as an EPC URI; needs no records").WithDescription($"A body looks like {Example}").Accepts<MakeElements>("application/json").Produces<Gs1Answer>().ProducesProblem(StatusCodes.Status400BadRequest);
        var labels = app.MapGroup("/api/packing/labels").WithTags("Packing");
        labels.MapGet("{pallet}", Look).WithSummary("What the label of a pallet says by the ledger, and what stands against it; ?lot=, ?packs= and ?product= are held against the ledger").Produces<PalletLabelAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
        labels.MapPost("{pallet}", Make).WithSummary("Give the pallet its number and make its label; say who with ?by=, and ?reason= for a pallet on hold or gone. The answer says where the PDF is").Produces<PalletLabelAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        labels.MapGet("{pallet}/label.svg", (MillDoor door, IClock clock, string pallet, string? size) => File(door, clock, pallet, size, isPdf: false)).WithSummary("The label as SVG; ?size=a6 or 4x6").ProducesProblem(StatusCodes.Status400BadRequest);
        labels.MapGet("{pallet}/label.pdf", (MillDoor door, IClock clock, string pallet, string? size) => File(door, clock, pallet, size, isPdf: true)).WithSummary("The label as PDF; ?size=a6 or 4x6").ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static IResult Parse(MillDoor door, IClock clock, [Description("the text; U+001D or <GS> separates")] string text, [Description(ApiMoment.Says)] string? asof)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        return ScanSight.Of(door.Mill!, text, at, at.InUtc().Year) is [var sight, ..] && sight.Reading.Keys is not null ? Results.Ok(ScanAnswer.Of(sight))
            : MixApi.Refuse([.. ScanReading.Of(text, at.InUtc().Year).Faults.Select(f => $"{f}")], "It cannot be read");
    }

    private static async Task<IResult> MakeAsync(HttpContext context, IClock clock)
    {
        var (body, refused) = await ApiBody.ReadAsync<MakeElements>(context.Request, Example);
        if (body is null)
        {
            return refused!;
        }

        var year = clock.GetCurrentInstant().InUtc().Year;
        var made = ElementString.Make([.. body.Elements.Select(e => (e.Key, e.Value))], year, whole: !body.Part);
        return !made.Ok ? MixApi.Refuse([.. made.Faults.Select(f => $"{f}")], "Not made") : body.PrefixLength is < 6 or > 12 ? MixApi.Refuse(["prefixLength: 6 to 12 digits."], "Not made") : Results.Ok(Gs1Answer.Of(made.Value, body.PrefixLength, year));
    }

    private static PalletOnLedger Of(MillDoor door, IClock clock, string pallet, SaidOfPallet? said = null) => PalletOnLedger.Of(door.Mill!, pallet, ApiMoment.Read(null, door.Mill!.Settings, clock)!.Value, said);

    private static IResult Look(MillDoor door, IClock clock, string pallet, string? lot, int? packs, string? product)
    {
        var found = Of(door, clock, pallet, new(lot, packs, product));
        return found.Unit is null ? Results.Problem(found.Against[0], statusCode: StatusCodes.Status404NotFound, title: "No such pallet") : Results.Ok(PalletLabelAnswer.Of(found));
    }

    private static IResult Make(MillDoor door, IClock clock, string pallet, [Description("Who makes it; demanded.")] string? by, string? reason, string? lot, int? packs, string? product)
    {
        var (made, refused) = Of(door, clock, pallet, new(lot, packs, product)).Label(door.Mill!, by, reason, clock.GetCurrentInstant());
        return refused.Count > 0 ? MixApi.Refuse(refused, "Not labelled") : Results.Json(PalletLabelAnswer.Of(made), statusCode: StatusCodes.Status201Created);
    }

    private static IResult File(MillDoor door, IClock clock, string pallet, string? size, bool isPdf)
    {
        var found = Of(door, clock, pallet);
        if (LabelSize.Find(size) is not { } sheet || found.Facts is null)
        {
            return MixApi.Refuse(found.Facts is null ? found.Against : [LabelSize.None(size)], "No label");
        }

        var label = PalletLabel.Draw(found.Facts, sheet, found.Facts.Made.Year);
        return !label.Ok ? MixApi.Refuse([.. label.Faults.Select(f => $"{f}")], "No label") : isPdf ? Results.File(label.Value.Pdf(), "application/pdf", $"{found.Code}-{sheet.Name}.pdf") : Results.Text(label.Value.Svg(), "image/svg+xml", Encoding.UTF8);
    }
}

/// <summary>Elements to be put together.</summary>
/// <param name="Elements">Values by application identifier.</param>
/// <param name="PrefixLength">Digits of the company prefix, for an EPC URI.</param>
/// <param name="Part">Whether this is one of several symbols on the item.</param>
public sealed record MakeElements(IReadOnlyDictionary<string, string> Elements, int? PrefixLength = null, bool Part = false);
