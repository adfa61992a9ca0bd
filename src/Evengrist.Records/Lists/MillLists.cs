namespace Evengrist.Records.Lists;

/// <summary>Every list of the mill that can be taken out, by name.</summary>
public static class MillLists
{
    /// <summary>All of them, by name.</summary>
    public static IReadOnlyList<MillList> All { get; } =
        [.. LedgerLists.All.Concat(PlaceLists.All).Concat(IntakeLists.All).Concat(TradeLists.All).Concat(MixLists.All).Concat(MillingLists.All).Concat(LaboratoryLists.All).Concat(SeasonLists.All).Concat(PackingLists.All).Concat(RecallSizeLists.All).Concat(EventLists.All)
            .OrderBy(l => l.Name, StringComparer.Ordinal)];

    /// <summary>The list of the name, case not mattering; null where there is none.</summary>
    public static MillList? Find(string? name) => All.FirstOrDefault(l => l.Name.Equals(name?.Trim(), StringComparison.OrdinalIgnoreCase));
}
