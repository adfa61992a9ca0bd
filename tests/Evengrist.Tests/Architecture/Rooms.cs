namespace Evengrist.Tests.Architecture;

/// <summary>The one table that says which room may use which.</summary>
/// <remarks>
/// A room uses the rooms to its left in the way of the grain and those that stand under all of them. Tracing uses the ledger only: a trace must
/// not care what a machine was. Season stands above all and is used by none.
/// </remarks>
internal static class Rooms
{
    private static readonly string[] Under = ["Quantities", "Numerics", "Ledger", "Laboratory"];

    public static readonly IReadOnlyDictionary<string, string[]> MayUse = new Dictionary<string, string[]>
    {
        ["Quantities"] = [],
        ["Numerics"] = [],
        ["Ledger"] = ["Quantities", "Numerics"],
        ["Laboratory"] = ["Quantities", "Numerics", "Ledger"],
        ["Intake"] = [.. Under],
        ["Bins"] = [.. Under, "Intake"],
        ["Mix"] = [.. Under, "Intake", "Bins"],
        ["Tempering"] = [.. Under, "Intake", "Bins", "Mix"],
        ["Milling"] = [.. Under, "Intake", "Bins", "Mix", "Tempering"],
        ["Streams"] = [.. Under, "Intake", "Bins", "Mix", "Tempering", "Milling"],
        ["Packing"] = [.. Under, "Intake", "Bins", "Mix", "Tempering", "Milling", "Streams"],
        ["Tracing"] = ["Quantities", "Ledger"],
        ["Season"] = [.. Under, "Intake", "Bins", "Mix", "Tempering", "Milling", "Streams", "Packing", "Tracing"],
    };
}
