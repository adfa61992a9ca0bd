using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Surveys;
using Evengrist.Web.Sights.Season;
using NodaTime;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A stream survey as a person enters it to be kept; nothing typed is lost.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Survey">The survey; null where something cannot be read.</param>
public sealed record SurveyForm(TypedFields Fields, StreamSurvey? Survey)
{
    /// <summary>Reads the fields.</summary>
    /// <param name="typed">What was typed; nothing where the form was not sent.</param>
    /// <param name="units">The mill's units.</param>
    /// <param name="read">Reads a moment of the mill's clock.</param>
    /// <param name="now">The moment offered.</param>
    public static SurveyForm Of(Func<string, string?> typed, IReadOnlyList<string> units, Func<string?, Instant?> read, string now)
    {
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(read);
        var fields = new TypedFields(typed);
        var (unit, by, remark) = (fields.Text("unit", units.Count > 0 ? units[0] : ""), fields.Text("by", ""), fields.Text("remark", ""));
        var (text, named, inKilograms) = (fields.Text("survey", ""), fields.Text("basis", Basis.At14.ToString()), fields.Text("yield-in", "percent") == "kg");
        var (rate, minutes, taken) = (fields.Number("rate", "Wheat on the rolls"), fields.Number("minutes", "Minutes weighed"), read(fields.Text("taken", now)));
        var methods = MethodFields.Read(fields, new StreamMethods());
        if (!fields.Has("survey"))
        {
            return new SurveyForm(fields, null);
        }

        if (taken is null)
        {
            fields.Fault($"Taken at: a day and time such as 2025-09-16T09:00 is needed; read “{fields["taken"]}”.");
        }

        if (rate is not > 0)
        {
            fields.Fault("Wheat on the rolls: t/h above 0 are needed, that yields are reckoned by.");
        }

        if (!Basis.TryParse(named, out var basis))
        {
            fields.Fault($"Basis: {string.Join(", ", CurveAsk.Bases)} are possible; read “{named}”.");
        }

        var lines = SurveyLines.Of(text);
        foreach (var fault in lines.Faults)
        {
            fields.Fault(fault);
        }

        if (fields.Faults.Count > 0)
        {
            return new SurveyForm(fields, null);
        }

        MillStream[] streams = [.. lines.Streams.Select(s => inKilograms ? s with { Yield = StreamSurvey.Yield(s.Yield, rate!.Value) } : s)];
        var survey = new StreamSurvey(unit, taken!.Value, by, rate!.Value, new StreamTable(streams, basis) { Methods = methods }) { MinutesWeighed = minutes, Valves = lines.Valves, Remark = remark };
        foreach (var fault in survey.Faults())
        {
            fields.Fault(fault);
        }

        return new SurveyForm(fields, fields.Faults.Count == 0 ? survey : null);
    }
}
