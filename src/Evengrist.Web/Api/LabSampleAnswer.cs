using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Samples;
using NodaTime;

namespace Evengrist.Web.Api;

/// <summary>A sample of the laboratory.</summary>
/// <param name="State">planned, due, taken or tested.</param>
/// <param name="Code">Its number; null while it is not taken.</param>
/// <param name="Place">Where.</param>
/// <param name="Line">Line of the plan; empty for one out of turn.</param>
/// <param name="At">When it was taken, or is due.</param>
/// <param name="Tests">What it is for, in words.</param>
/// <param name="Waiting">What is still to do.</param>
/// <param name="Results">What was read, in the order it was recorded.</param>
public sealed record LabSampleAnswer(string State, string? Code, string Place, string Line, DateTimeOffset At, string[] Tests, string[] Waiting, LabResultAnswer[] Results)
{
    internal static LabSampleAnswer Of(PlannedSample p, Instant at)
    {
        string[] tests = [.. p.Line.Tests.Select(t => t.Words)];
        return new(p.IsDue(at) ? "due" : "planned", null, p.Place.Code, p.Line.Code, p.Due.ToDateTimeOffset(), tests, tests, []);
    }

    internal static LabSampleAnswer Of(TakenSample s, InstrumentRecord instruments) => new(
        s.IsTested ? "tested" : "taken", s.Sample.Code, s.Place.Code, s.Sample.Line, s.At.ToDateTimeOffset(), [.. s.Sample.Tests.Select(t => t.Words)], [.. s.Waiting.Select(t => t.Words)],
        [.. s.Readings.Select(r => new LabResultAnswer(r.Id.Value, r.What.ToString(), r.Value, r.Unit, r.Basis.IsStated ? r.Basis.ToString() : null, r.Method, r.Instrument, instruments.ToApply(r)?.Adjust(r.Value)))]);
}

/// <summary>One value as reported.</summary>
/// <param name="Fact">Number of the fact.</param>
/// <param name="What">The property.</param>
/// <param name="Value">The value, digits kept.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Basis">The moisture basis; null for a property without one.</param>
/// <param name="Method">The method.</param>
/// <param name="Instrument">The instrument; empty where the method needs none.</param>
/// <param name="Adjusted">What is judged, where a setting of the instrument is applied here; null where none is.</param>
public sealed record LabResultAnswer(long Fact, string What, decimal Value, string Unit, string? Basis, string Method, string Instrument, decimal? Adjusted);
