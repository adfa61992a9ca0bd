using System.ComponentModel;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Sights.Laboratory;
using Evengrist.Web.Start;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>Kept calibrations of spectra over HTTP: listed, set anew, read with.</summary>
internal static class LabCalibrationsApi
{
    /// <summary>Adds showing, setting and reading.</summary>
    public static void MapLabCalibrations(this RouteGroupBuilder lab)
    {
        lab.MapGet("calibrations", (MillDoor door) => SpectralCalibrations.All(door.Mill!).Select(LabCalibrationAnswer.Of).ToArray()).WithSummary("Every version of every kept calibration").Produces<LabCalibrationAnswer[]>();
        lab.MapPost("calibrations/adjust", Adjust).WithSummary("Test pairs of reference and reading after ISO 12099, and with do: keep set bias or slope as a further version; say who with ?by=")
            .WithDescription($"with (version and property: 1 protein), pairs (CSV: {CalibrationPairs.Example}), do (look or keep), set (Bias or SlopeAndBias), why. {AdjustmentModel.Fewest} pairs or more are needed to set anything.")
            .Produces<LabAdjustAnswer>().Produces<LabAdjustAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest);
        lab.MapPost("calibrations/read", Read).WithSummary("Read spectra with a kept calibration, and with do: record enter them on the samples whose numbers they have; say who with ?by=")
            .WithDescription("with, text (CSV or JCAMP-DX; id is the number of the sample), do (read or record), key, method, instrument, measured (now when left out), reason. What lies outside the calibration is recorded by a method of its own, which no lot is judged by. The same key again is the same entry.")
            .Produces<PlsReadingsAnswer>().Produces<PlsReadingsAnswer>(StatusCodes.Status201Created).ProducesProblem(StatusCodes.Status400BadRequest).ProducesProblem(StatusCodes.Status409Conflict);
    }

    private static IResult Adjust(MillDoor door, IClock clock, LabAdjustAsk ask, [Description("Who decides it; demanded to keep.")] string? by)
    {
        var form = new AdjustForm { With = ask.With, Pairs = ask.Pairs, Do = ask.Do, Set = ask.Set, Why = ask.Why };
        var kept = form.Act(door.Mill!, by?.Trim(), "Say who decides it: add ?by=", clock.GetCurrentInstant());
        return form.Faults.Count > 0 ? MixApi.Refuse(form.Faults)
            : Results.Json(new LabAdjustAnswer(LabValidateAnswer.Of(form.Test!), kept is null ? null : LabCalibrationAnswer.Of(kept)), statusCode: kept is null ? StatusCodes.Status200OK : StatusCodes.Status201Created);
    }

    private static IResult Read(MillDoor door, IClock clock, LabReadAsk ask, [Description("Who records them; demanded to record.")] string? by)
    {
        var form = new SpectraReadForm { With = ask.With, Text = ask.Text, Do = ask.Do, Key = ask.Key, Method = ask.Method, Instrument = ask.Instrument, Reason = ask.Reason };
        var receipt = form.Act(door.Mill!, ApiMoment.OrNow(ask.Measured, door.Mill!.Settings, clock), by?.Trim(), "Say who records them: add ?by=");
        return form.Faults.Count > 0 ? MixApi.Refuse(form.Faults) : form.Questions.Count > 0 ? LabBenchApi.Questions(form.Questions)
            : Results.Json(form.Answer, statusCode: receipt?.Added > 0 ? StatusCodes.Status201Created : StatusCodes.Status200OK);
    }
}

/// <summary>Bias or slope to be tested and set.</summary>
/// <param name="With">Version and property, as <c>1 protein</c>.</param>
/// <param name="Pairs">CSV: sample, reference, read.</param>
/// <param name="Do">look or keep.</param>
/// <param name="Set">Bias or SlopeAndBias.</param>
/// <param name="Why">Why.</param>
public sealed record LabAdjustAsk(string With, string Pairs, string? Do = null, string? Set = null, string? Why = null);

/// <summary>Spectra to be read.</summary>
/// <param name="With">Version and property, as <c>1 protein</c>.</param>
/// <param name="Text">CSV or JCAMP-DX.</param>
/// <param name="Do">read or record.</param>
/// <param name="Key">Of the entry.</param>
/// <param name="Method">Recorded by.</param>
/// <param name="Instrument">That took them.</param>
/// <param name="Measured">When.</param>
/// <param name="Reason">Why what is asked about is taken.</param>
public sealed record LabReadAsk(string With, string Text, string? Do = null, string? Key = null, string? Method = null, string? Instrument = null, string? Measured = null, string? Reason = null);

/// <summary>The test, and what was kept.</summary>
/// <param name="Test">After ISO 12099.</param>
/// <param name="Kept">The further version; null where none was kept.</param>
public sealed record LabAdjustAnswer(LabValidateAnswer Test, LabCalibrationAnswer? Kept);

/// <summary>A version of a kept calibration.</summary>
/// <param name="Property">What it reads.</param>
/// <param name="Version">From 1.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Basis">Its basis.</param>
/// <param name="Factors">How many.</param>
/// <param name="Samples">It was made of.</param>
/// <param name="Errors">SEC, SECV, SEP, bias.</param>
/// <param name="Adjustments">Biases and slopes set, the newest last and in force.</param>
/// <param name="By">Who kept it.</param>
/// <param name="Kept">When.</param>
public sealed record LabCalibrationAnswer(string Property, int Version, string Unit, string Basis, int Factors, int Samples, CalibrationErrors Errors, LabAdjustmentAnswer[] Adjustments, string By, DateTimeOffset Kept)
{
    internal static LabCalibrationAnswer Of(KeptCalibration k) => new(
        k.Calibration.Purpose.Property, k.Version, k.Calibration.Purpose.Unit, k.Calibration.Purpose.Basis, k.Calibration.Factors, k.Calibration.Samples, k.Calibration.Errors,
        [.. k.Calibration.Adjustments.Select(a => new LabAdjustmentAnswer(a.At.ToDateTimeOffset(), a.By, a.Bias, a.Slope, a.Samples, a.Why, a.Test))], k.By, k.Recorded.ToDateTimeOffset());
}

/// <summary>A bias or slope that was set.</summary>
public sealed record LabAdjustmentAnswer(DateTimeOffset At, string By, double Bias, double Slope, int Samples, string Why, string Test);
