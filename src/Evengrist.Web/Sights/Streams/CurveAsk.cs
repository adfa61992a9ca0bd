using Evengrist.Quantities;
using Evengrist.Streams;
using Evengrist.Streams.Dividing;
using Evengrist.Web.Sights.Season;

namespace Evengrist.Web.Sights.Streams;

/// <summary>A survey and the ash to cut at, as a person typed them.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Table">The survey; null where nothing was asked yet or something cannot be read.</param>
/// <param name="GoesTo">The flour of each stream, by its code.</param>
/// <param name="CutAt">Ash to cut at, per cent; null for none.</param>
public sealed record CurveAsk(TypedFields Fields, StreamTable? Table, IReadOnlyDictionary<string, string> GoesTo, double? CutAt)
{
    /// <summary>Moisture bases a survey can be on.</summary>
    public static IReadOnlyList<Basis> Bases { get; } = [Basis.At14, Basis.At13Point5, Basis.Dry];

    /// <summary>An invented survey of the usual shape, to try the page with.</summary>
    public const string Example = """
        1M, 14.0, 0.36, 10.6, patent
        2M, 11.5, 0.38, 10.7, patent
        1MF, 8.0, 0.39, 10.4, patent
        3M, 9.0, 0.42, 11.0, patent
        GR, 4.0, 0.46, 12.0, patent
        B2, 6.0, 0.47, 12.4, patent
        B1, 3.0, 0.48, 11.6, patent
        4M, 5.5, 0.52, 11.3, patent
        B3, 5.0, 0.60, 13.9, first clear
        5M, 3.5, 0.72, 11.7, first clear
        B4, 2.0, 0.95, 15.2, first clear
        6M, 2.0, 1.10, 12.3, second clear
        BF, 1.5, 1.60, 14.8, second clear
        7M, 1.0, 1.95, 13.2, second clear
        """;

    /// <summary>Reads the fields.</summary>
    /// <param name="typed">What was typed; nothing where the form was not sent.</param>
    /// <param name="start">The survey that stands in the form before anything was typed; null for none.</param>
    public static CurveAsk Of(Func<string, string?> typed, DivideSpec? start = null)
    {
        var fields = new TypedFields(typed);
        var (text, named) = (fields.Text("survey", start is null ? "" : SurveyText.Of(start.Table, start.Valves)), fields.Text("basis", (start?.Table.Basis ?? Basis.At14).ToString()));
        var cut = fields.Number("cut", "Ash to cut at");
        if (text.Length == 0)
        {
            return new CurveAsk(fields, null, new Dictionary<string, string>(), null);
        }

        if (!Basis.TryParse(named, out var basis))
        {
            fields.Fault($"Basis: {string.Join(", ", Bases)} are possible; read “{named}”.");
        }

        if (cut is { } at && !StreamTable.CanBeAsh(at))
        {
            fields.Fault("Ash to cut at: give a number above 0 and at most 10 %.");
        }

        var lines = SurveyLines.Of(text);
        var table = new StreamTable(lines.Streams, basis) { Methods = start?.Table.Methods ?? new StreamMethods() };
        foreach (var fault in lines.Faults.Count > 0 ? lines.Faults : table.Faults())
        {
            fields.Fault(fault);
        }

        return new CurveAsk(fields, fields.Faults.Count == 0 ? table : null, lines.GoesTo, cut);
    }
}
