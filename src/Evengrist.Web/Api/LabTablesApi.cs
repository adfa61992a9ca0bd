using System.ComponentModel;
using Evengrist.Laboratory.Methods;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Methods, instruments and their checks over HTTP.</summary>
internal static class LabTablesApi
{
    /// <summary>Adds showing and keeping.</summary>
    public static void MapLabTables(this RouteGroupBuilder lab)
    {
        lab.MapGet("methods", (MillDoor door) => Results.Text(LabMethodsJson.Write(KeepLabMethods.Newest(door.Mill!).Methods), "application/json")).WithSummary("The methods in use, with repeatability, reproducibility and where they come from").Produces<object>();
        Post<LabMethods>(lab, "methods", "Keep the table of methods as the next version; say who with ?by=", LabMethodsJson.PaperKind, LabMethodsJson.TryRead, KeepLabMethods.Keep);
        lab.MapGet("methods/repeatability", Repeatability).WithSummary($"Repeatability by the bench's own duplicates of {OwnDuplicates.Days} days, beside that of the table").Produces<OwnRepeatabilityAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapGet("instruments", Standings).WithSummary("Every instrument and how it stands by its check samples").Produces<LabInstrumentAnswer[]>().ProducesProblem(StatusCodes.Status400BadRequest);
        Post<LabInstruments>(lab, "instruments", "Keep the table of instruments as the next version; say who with ?by=", LabInstrumentsJson.PaperKind, LabInstrumentsJson.TryRead, KeepLabInstruments.Keep);
        lab.MapPost("instruments/checks", Check).WithSummary("Keep a check sample read on an instrument; say who with ?by=")
            .WithDescription("Texts as a person types them: instrument, at (mill time or with an offset; now when left out), what (Protein …), known, found (several readings with a blank between), sample, remark.")
            .Produces<LabInstrumentAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
    }

    private static void Post<T>(RouteGroupBuilder lab, string path, string summary, string kind, TableReading<T> read, Func<Mill, T, string, int> keep)
        where T : class =>
        lab.MapPost(path, (Delegate)(async (HttpContext context, MillDoor door) =>
        {
            using var reader = new StreamReader(context.Request.Body);
            var by = context.Request.Query["by"].ToString().Trim();
            return !read(await reader.ReadToEndAsync(context.RequestAborted), out var table, out var faults) ? MixApi.Refuse(faults)
                : by.Length == 0 ? MixApi.Refuse(["Say who keeps it: add ?by="])
                : Results.Json(new KeptAnswer(kind, path, keep(door.Mill!, table, by)), statusCode: StatusCodes.Status201Created);
        })).WithSummary(summary).Accepts<object>("application/json").Produces<KeptAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);

    private static IResult Repeatability(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is { } at
        ? Results.Ok(OwnDuplicates.Of(door.Mill!, KeepLabMethods.Newest(door.Mill!).Methods, at)
            .Select(o => new OwnRepeatabilityAnswer(o.Method.Code, o.Method.What.ToString(), o.Method.Unit, o.Method.Basis.IsStated ? o.Method.Basis.ToString() : null, o.Own.Limit, o.Own.StandardDeviation, o.Own.Freedom, o.Own.Groups, o.Own.Mean, (double?)o.Method.Repeatability?.At((decimal)o.Own.Mean))).ToArray())
        : ApiMoment.Bad(asof);

    private static IResult Standings(MillDoor door, IClock clock, [Description(ApiMoment.Says)] string? asof) => ApiMoment.Read(asof, door.Mill!.Settings, clock) is { } at
        ? Results.Ok(InstrumentChecks.Standings(door.Mill!, at).Select(LabInstrumentAnswer.Of).ToArray())
        : ApiMoment.Bad(asof);

    private static IResult Check(MillDoor door, IClock clock, CheckForm form, [Description("Who made the check; demanded.")] string? by)
    {
        var (mill, now) = (door.Mill!, clock.GetCurrentInstant());
        var faults = form.Keep(mill, ApiMoment.OrNow(form.At, mill.Settings, clock), by?.Trim(), "Say who made the check: add ?by=", now);
        return faults.Count > 0 ? MixApi.Refuse(faults)
            : Results.Json(LabInstrumentAnswer.Of(InstrumentChecks.Standings(mill, now).Single(s => s.Instrument.Code.Equals(form.Instrument!.Trim(), StringComparison.OrdinalIgnoreCase))), statusCode: StatusCodes.Status201Created);
    }
}

/// <summary>How an instrument stands.</summary>
/// <param name="Code">Its code.</param>
/// <param name="State">InCheck, Overdue, Out, or Unchecked where no check is laid down.</param>
/// <param name="Why">In a sentence.</param>
/// <param name="LastCheck">When it was last checked; null where it was not.</param>
/// <param name="Due">When the next check is due; null where none is laid down or one is overdue or failed.</param>
/// <param name="Instrument">The instrument as kept.</param>
public sealed record LabInstrumentAnswer(string Code, string State, string Why, DateTimeOffset? LastCheck, DateTimeOffset? Due, object Instrument)
{
    internal static LabInstrumentAnswer Of(InstrumentStanding s) =>
        new(s.Instrument.Code, s.State.ToString(), s.Why, s.Last?.At.ToDateTimeOffset(), s.Due?.ToDateTimeOffset(), System.Text.Json.JsonDocument.Parse(LabInstrumentsJson.Write(new([s.Instrument]))).RootElement.GetProperty("instruments")[0].Clone());
}

/// <summary>Repeatability of a method by the laboratory's own duplicates, unit of the method.</summary>
/// <param name="Method">Code of the method.</param>
/// <param name="What">The property.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Basis">The moisture basis; null for a property without one.</param>
/// <param name="R">2.8 times the pooled standard deviation.</param>
/// <param name="StandardDeviation">The pooled standard deviation.</param>
/// <param name="Freedom">Its degrees of freedom; for pairs, how many pairs.</param>
/// <param name="Groups">Groups of two or more.</param>
/// <param name="Mean">Mean of the groups' means.</param>
/// <param name="TableR">r of the table at that mean; null where it is not filled in.</param>
public sealed record OwnRepeatabilityAnswer(string Method, string What, string Unit, string? Basis, double R, double StandardDeviation, int Freedom, int Groups, double Mean, double? TableR);
