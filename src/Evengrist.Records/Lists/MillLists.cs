namespace Evengrist.Records.Lists;

/// <summary>Every list of the mill that can be taken out, by name.</summary>
public static class MillLists
{
    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<MillList> All { get; } = [.. Rooms.SelectMany(r => r).OrderBy(l => l.Name, StringComparer.Ordinal)];

    private static IEnumerable<IReadOnlyList<MillList>> Rooms =>
    [
        LedgerLists.All, PlaceLists.All, StorageLists.All, IntakeLists.All, TradeLists.All, ContractLists.All, MixLists.All, MillingLists.All, FlowSheetLists.All, StreamCurves.All, AdditionLists.All, LaboratoryLists.All, ChartLists.All, SeasonLists.All, PackingLists.All, HallLists.All, ReworkLists.All, DrillLists.All, RecallSizeLists.All,
        EventLists.All, GradeLists.All, RelationLists.All, RuleLists.All, TrialLists.All, MethodLists.All, CalibrationLists.All, HallNowLists.All, TermsLists.All,
    ];

    /// <summary>The list of the name, case not mattering; null where there is none.</summary>
    public static MillList? Find(string? name) => All.FirstOrDefault(l => l.Name.Equals(name?.Trim(), StringComparison.OrdinalIgnoreCase));
}
