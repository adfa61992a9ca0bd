using Evengrist.Quantities.Lists;
using Evengrist.Records.Milling;
using Evengrist.Records.Streams;
using Evengrist.Streams;

namespace Evengrist.Records.Lists;

/// <summary>Mill tests and surveys of streams, figure by figure.</summary>
internal static class MillingLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("mill-tests", "Tests of mill units, a row for each figure", new ListOf<(KeptMillTest Kept, string What, string Of, decimal? Size, double? Value, ListUnit Unit, string Basis)>()
                .Text("test", r => r.Kept.Code).Whole("version", r => r.Kept.Version).Text("mill unit", r => r.Kept.Paper.Unit).Moment("taken", r => r.Kept.Paper.TakenAt).Text("taken by", r => r.Kept.Paper.TakenBy).Whole("version of the flow sheet", r => r.Kept.Paper.SheetVersion)
                .Text("what", r => r.What).Text("passage or stream", r => r.Of).Number("aperture", ListOrigin.Stated, ListUnit.Micrometre, r => r.Size).Number("value", ListOrigin.Seen, ListUnit.Percent, r => r.Value is { } v ? (decimal)v : null).Text("basis", r => r.Basis)
                .Text("struck, because", r => r.Kept.Paper.Struck).Text("remark", r => r.Kept.Paper.Remark).Text("kept by", r => r.Kept.By).Moment("kept", r => r.Kept.Recorded),
            (mill, ask) => MillTests.Newest(mill).Where(t => ask.Holds(t.Paper.TakenAt) && (ask.Names(t.Paper.Unit) || ask.Names(t.Code))).SelectMany(Figures)),
        MillList.Of("stream-surveys", "Surveys of flour streams, a row for each stream", new ListOf<(KeptSurvey Kept, MillStream Stream)>()
                .Text("mill unit", r => r.Kept.Survey.Unit).Whole("version", r => r.Kept.Version).Moment("taken", r => r.Kept.Survey.TakenAt).Text("taken by", r => r.Kept.Survey.TakenBy).Number("wheat at first break", ListOrigin.Seen, ListUnit.TonnesPerHour, r => (decimal)r.Kept.Survey.WheatTonnesPerHour)
                .Text("stream", r => r.Stream.Code).Number("yield as given", ListOrigin.Seen, null, r => (decimal)r.Stream.Yield).Number("ash", ListOrigin.Seen, ListUnit.Percent, r => (decimal)r.Stream.AshPercent).Number("protein", ListOrigin.Seen, ListUnit.Percent, r => UsualColumns.Exact(r.Stream.ProteinPercent))
                .Text("basis of ash and protein", r => r.Kept.Survey.Table.Basis.ToString()).Number("falling number", ListOrigin.Seen, ListUnit.Second, r => UsualColumns.Exact(r.Stream.FallingNumberSeconds)).Text("went to", r => r.Kept.Survey.Valves.FirstOrDefault(v => v.Stream == r.Stream.Code)?.Now)
                .Text("remark", r => r.Kept.Survey.Remark).Text("kept by", r => r.Kept.By).Moment("kept", r => r.Kept.Recorded),
            (mill, ask) => StreamSurveys.All(mill).Where(s => ask.Holds(s.Survey.TakenAt) && ask.Names(s.Survey.Unit)).SelectMany(s => s.Survey.Table.Streams.Select(r => (s, r)))),
    ];

    private static IEnumerable<(KeptMillTest Kept, string What, string Of, decimal? Size, double? Value, ListUnit Unit, string Basis)> Figures(KeptMillTest test)
    {
        var basis = test.Paper.Basis.ToString();
        foreach (var stream in test.Paper.Streams)
        {
            yield return (test, "yield", stream.Product, null, stream.YieldPercent, ListUnit.Percent, "");
            yield return (test, "ash", stream.Product, null, stream.AshPercent, ListUnit.Percent, basis);
            yield return (test, "protein", stream.Product, null, stream.ProteinPercent, ListUnit.Percent, basis);
        }

        foreach (var (passage, release) in test.Paper.Releases)
        {
            yield return (test, "break release", passage, null, release, ListUnit.Percent, "");
        }

        foreach (var sieve in test.Paper.Sieves)
        {
            yield return (test, "through the sieve", sieve.Passage, (decimal)sieve.ApertureMicrometres, sieve.ThroughPercent, ListUnit.Percent, "");
        }
    }
}
