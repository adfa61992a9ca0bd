using Evengrist.Quantities.Lists;
using Evengrist.Records.Streams;
using Evengrist.Streams;

namespace Evengrist.Records.Lists;

/// <summary>Flour streams from the least ash to the most, added up, as a list.</summary>
public static class StreamCurves
{
    private const string Name = "stream-curve", Title = "Flour streams from the least ash to the most, added up; of each unit's newest survey";

    internal static IReadOnlyList<MillList> All { get; } =
    [
        new(Name, Title, (mill, ask) => Columns().List(Name, Title, StreamSurveys.Units(mill).Where(u => (ask.Of.Length > 0 ? ask.Of : ask["unit"]) is var unit && (unit.Length == 0 || unit.Equals(u, StringComparison.OrdinalIgnoreCase)))
            .SelectMany(u => StreamSurveys.Newest(mill, u) is { } kept ? Rows(u, kept.Survey.Table, s => kept.Survey.Valves.FirstOrDefault(v => v.Stream == s)?.Now) : []))),
    ];

    /// <summary>The list of one survey.</summary>
    /// <param name="unit">The mill unit; may be empty.</param>
    /// <param name="table">The survey, without faults.</param>
    /// <param name="flour">The flour a stream goes to, by its code; null where none is said.</param>
    public static TakenList Of(string unit, StreamTable table, Func<string, string?> flour) => Columns().List(Name, Title, Rows(unit, table, flour));

    private static IEnumerable<(string Unit, StreamTable Table, AshPoint Point, string? Flour)> Rows(string unit, StreamTable table, Func<string, string?> flour) => AshCurve.Of(table).Points.Select(p => (unit, table, p, flour(p.Stream.Code)));

    private static ListOf<(string Unit, StreamTable Table, AshPoint Point, string? Flour)> Columns() => new ListOf<(string Unit, StreamTable Table, AshPoint Point, string? Flour)>()
        .Text("mill unit", r => r.Unit).Text("stream", r => r.Point.Stream.Code).Text("flour", r => r.Flour).Number("yield, of the wheat", ListOrigin.Seen, ListUnit.Percent, r => (decimal)r.Point.Stream.Yield).Number("ash", ListOrigin.Seen, ListUnit.Percent, r => (decimal)r.Point.Stream.AshPercent)
        .Number("protein", ListOrigin.Seen, ListUnit.Percent, r => (decimal?)r.Point.Stream.ProteinPercent).Text("basis of ash and protein", r => r.Table.Basis.ToString()).Reckoned("up to here, of the wheat", ListUnit.Percent, r => r.Point.Together.Yield).Reckoned("up to here, of the flour", ListUnit.Percent, r => 100 * r.Point.ShareOfFlour)
        .Reckoned("ash up to here", ListUnit.Percent, r => r.Point.Together.AshPercent).Reckoned("protein up to here", ListUnit.Percent, r => r.Point.Together.ProteinPercent);
}
