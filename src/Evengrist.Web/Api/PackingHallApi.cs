using System.ComponentModel;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Plant.Answers;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Packing;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Products, orders, lines and the order of runs over HTTP.</summary>
internal static class PackingHallApi
{
    /// <summary>Adds them.</summary>
    public static void MapPackingHall(this IEndpointRouteBuilder app)
    {
        var packing = app.MapGroup("/api/packing").WithTags("Packing");
        packing.MapGet("products", (MillDoor door) => Results.Content($"[{string.Join(",", Products.Newest(door.Mill!).Select(k => k.Product.ToJson()))}]", "application/json")).WithSummary("Products, each in its newest version");
        packing.MapPost("products", (Delegate)KeepProductAsync).WithSummary("Keep a product as the next version of its code; say who with ?by=").Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapGet("orders", Orders).WithSummary("Orders with what the ledger has for each: gone, standing, still to be packed").Produces<OrderAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapPost("orders", (Delegate)KeepOrderAsync).WithSummary("Keep an order, or with ?after= the next version of one; say who with ?by=").Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapPost("orders/file", (Delegate)FileAsync).WithSummary("Orders of a file, CSV or XLSX, as the body: looked at, and kept as a whole with ?keep=true&by=. The same file again adds nothing").Accepts<object>("text/csv", "text/plain", "application/octet-stream", "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet").Produces<OrderFileAnswer>().ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapGet("plan", Plan).WithSummary("The plan of the packing hall in force").Produces<HallPlanAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
        packing.MapPost("plan", Make).WithSummary("Put all open orders in order, from the records; kept with ?why=…&by=…. Starts no line").Produces<HallPlanAnswer>().ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status422UnprocessableEntity);
        packing.MapGet("lines", (MillDoor door) => Results.Content(LineBook.Write(KeepLineBook.Newest(door.Mill!).Book), "application/json")).WithSummary("The lines: rates, crews, rules for changing over, shifts, who may sign a clean-down");
        packing.MapPost("lines", (HttpContext context, MillDoor door, string? by, int? after) => KeepTableAsync<LineBook>(context, (LineBook.PaperKind, "hall"), by, LineBook.TryRead, (book, name) => KeepLineBook.KeepAfter(door.Mill!, book, name, after ?? KeepLineBook.Newest(door.Mill!).Version), () => KeepLineBook.Newest(door.Mill!).Version))
            .WithSummary("Keep the lines as the next version; say who with ?by=, and with ?after= the version it follows").Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapGet("campaigns", (MillDoor door) => Results.Content(MillCampaigns.Write(KeepMillCampaigns.Newest(door.Mill!).Campaigns), "application/json")).WithSummary("What the mill means to make into its flour bins");
        packing.MapPost("campaigns", (HttpContext context, MillDoor door, string? by, int? after) => KeepTableAsync<MillCampaigns>(context, (MillCampaigns.PaperKind, "mill"), by, MillCampaigns.TryRead, (campaigns, name) => KeepMillCampaigns.KeepAfter(door.Mill!, campaigns, name, after ?? KeepMillCampaigns.Newest(door.Mill!).Version), () => KeepMillCampaigns.Newest(door.Mill!).Version))
            .WithSummary("Keep what the mill means to make as the next version; say who with ?by=, and with ?after= the version it follows").Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapGet("bins", Bins).WithSummary("Flour bins that feed lines: level, flows of the last hours, minutes to empty or full").Produces<FlourBinAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        packing.MapGet("packaging/{lot}", Packaging).WithSummary("Where and when a lot of packaging was on a line, and the pallets packed meanwhile").Produces<PackagingAnswer>().ProducesProblem(StatusCodes.Status404NotFound);
    }

    private static async Task<IResult> KeepTableAsync<T>(HttpContext context, (string Kind, string Code) paper, string? by, TableReading<T> read, Func<T, string, IReadOnlyList<string>> keep, Func<int> version)
        where T : class
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!read(await reader.ReadToEndAsync(context.RequestAborted), out var table, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var refused = string.IsNullOrWhiteSpace(by) ? ["Say who keeps it with ?by=: every record carries a name."] : keep(table, by.Trim());
        return refused.Count > 0 ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(paper.Kind, paper.Code, version()), statusCode: StatusCodes.Status201Created);
    }

    private static IResult Orders(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
        : Results.Ok(HallRecords.Standings(door.Mill!, at).Select(OrderAnswer.Of).ToArray());

    private static async Task<IResult> KeepOrderAsync(HttpContext context, MillDoor door, [Description("who keeps it")] string? by, [Description("the version it follows; 0 or left out for a new one")] int? after)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!PackingOrder.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var order, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (kept, refused) = PackingOrders.Keep(door.Mill!, order, by, after ?? 0);
        return kept is null ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(PackingOrder.PaperKind, kept.Order.Number, kept.Version), statusCode: StatusCodes.Status201Created);
    }

    private static async Task<IResult> KeepProductAsync(HttpContext context, MillDoor door, [Description("who keeps it")] string? by, [Description("the version it follows; 0 for a new one, left out for whichever is newest")] int? after)
    {
        using var reader = new StreamReader(context.Request.Body);
        if (!Product.TryRead(await reader.ReadToEndAsync(context.RequestAborted), out var product, out var faults))
        {
            return MixApi.Refuse(faults);
        }

        var (kept, refused) = Products.Keep(door.Mill!, product, by, after);
        return kept is null ? MixApi.Refuse(refused) : Results.Json(new KeptAnswer(Product.PaperKind, kept.Product.Code, kept.Version), statusCode: StatusCodes.Status201Created);
    }

    private static async Task<IResult> FileAsync(HttpContext context, MillDoor door, IClock clock, [Description("true to keep the orders")] bool? keep, [Description("who keeps them")] string? by)
    {
        using var body = new MemoryStream();
        await context.Request.Body.CopyToAsync(body, context.RequestAborted);
        body.Position = 0;
        var form = new OrderFileForm();
        var orders = form.Look(door.Mill!, body, door.Mill!.Settings.OpeningOr(clock.GetCurrentInstant()));
        return orders is null ? MixApi.Refuse(form.Faults)
            : keep == true && string.IsNullOrWhiteSpace(by) ? MixApi.Refuse(["Say who keeps them with ?by=: every record carries a name."])
            : keep == true && orders.In(door.Mill!, by!) is var (added, known) ? Results.Ok(new OrderFileAnswer(orders.Rows.Count, added, known, form.Warnings)) : Results.Ok(new OrderFileAnswer(orders.Rows.Count, 0, 0, form.Warnings));
    }

    private static IResult Plan(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
        : PackingPlans.InForce(door.Mill!, at) is { } kept ? Results.Ok(HallPlanAnswer.Of(kept.Plan))
        : Results.Problem("No plan is kept that begins by then: make one with POST /api/packing/plan.", statusCode: StatusCodes.Status404NotFound, title: "No plan");

    private static IResult Make(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof, [Description("longest search, 0.5 to 60 s; 4 when left out")] double? seconds, [Description("why the plan is kept; not kept when left out")] string? why, [Description("who keeps it")] string? by)
    {
        if (ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at)
        {
            return ApiMoment.Bad(asof);
        }

        if (seconds is not null and not (>= 0.5 and <= 60))
        {
            return MixApi.Refuse(["The longest search takes 0.5 to 60 s."], "Not asked rightly");
        }

        var (posed, outcome, plan) = new PlanRuns(at) { Longest = TimeSpan.FromSeconds(seconds ?? 4) }.In(door.Mill!);
        return plan is null ? Posed.Result(new Reply<HallPlanAnswer>(null, PackingPlanAnswer.Of(outcome, posed.Spec).Reasons))
            : why is not null && PackingPlans.Keep(door.Mill!, plan, why, by) is { Kept: null, Faults: var faults } ? MixApi.Refuse(faults) : Results.Ok(HallPlanAnswer.Of(plan));
    }

    private static IResult Bins(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
        : Results.Ok(HallRecords.Bins(door.Mill!, at, layered: false).Select(b => new FlourBinAnswer(b.Place.Code, b.Place.Material, b.Level.Tonnes, b.Place.Capacity?.Tonnes, b.InTonnesPerHour, b.OutTonnesPerHour, b.NetUncertainty, b.MinutesToEmpty, b.MinutesToFull, b.MinutesUncertainty)).ToArray());

    private static IResult Packaging(MillDoor door, IClock clock, string lot, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is not { } at ? ApiMoment.Bad(asof)
        : PackagingUses.UsesOf(door.Mill!, lot) is { Count: > 0 } uses ? Results.Ok(new PackagingAnswer([.. uses.Select(PackagingUseAnswer.Of)], [.. PackagingUses.PalletsOf(door.Mill!, lot, at).Select(p => p.Pallet.Code)]))
        : Results.Problem($"No lot {lot} was on a line.", statusCode: StatusCodes.Status404NotFound, title: "No such lot");
}

/// <summary>What became of a file of orders.</summary>
/// <param name="Rows">Orders in it.</param>
/// <param name="Added">Kept now.</param>
/// <param name="Known">Known before.</param>
/// <param name="Warnings">What should be looked at.</param>
public sealed record OrderFileAnswer(int Rows, int Added, int Known, IReadOnlyList<string> Warnings);

/// <summary>A flour bin: level, flows, and minutes until it is empty or full if they go on; ± one standard deviation.</summary>
public sealed record FlourBinAnswer(string Bin, string Flour, decimal Tonnes, decimal? CapacityTonnes, double InTonnesPerHour, double OutTonnesPerHour, double? NetUncertainty, double? MinutesToEmpty, double? MinutesToFull, double? MinutesUncertainty);

/// <summary>A lot of packaging: where it was, and the pallets packed meanwhile.</summary>
public sealed record PackagingAnswer(IReadOnlyList<PackagingUseAnswer> Uses, IReadOnlyList<string> Pallets);
