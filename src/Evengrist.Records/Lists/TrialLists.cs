using Evengrist.Quantities.Lists;
using Evengrist.Records.Milling;

namespace Evengrist.Records.Lists;

/// <summary>Trials of mill units on paper that are kept.</summary>
internal static class TrialLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("mill-trials", "Trials of mill units on paper that are kept, a row for each field that was typed", new ListOf<(KeptTrial Kept, string Field, string Typed)>()
                .Text("mill unit", r => r.Kept.Paper.Unit).Text("trial", r => r.Kept.Paper.Name).Whole("version", r => r.Kept.Version).Whole("version of the flow sheet", r => r.Kept.Paper.SheetVersion).Text("field", r => r.Field).Text("as it was typed", r => r.Typed)
                .Text("remark", r => r.Kept.Paper.Remark).Text("struck, because", r => r.Kept.Paper.Struck).Text("kept by", r => r.Kept.By).Moment("kept", r => r.Kept.Recorded),
            (mill, ask) => FlowSheets.Newest(mill).Where(s => (ask.Of.Length > 0 ? ask.Of : ask["unit"]) is var unit && (unit.Length == 0 || unit.Equals(s.Unit, StringComparison.OrdinalIgnoreCase)))
                .SelectMany(s => MillTrials.Of(mill, s.Unit)).SelectMany(t => t.Paper.Typed.OrderBy(f => f.Key, StringComparer.Ordinal).Select(f => (t, f.Key, f.Value)))),
    ];
}
