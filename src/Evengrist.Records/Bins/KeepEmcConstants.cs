using Evengrist.Bins.Storage;

namespace Evengrist.Records.Bins;

/// <summary>The mill's own table of equilibrium constants: kept by version, the newest is used; before there is one, the program's own.</summary>
public static class KeepEmcConstants
{
    private const string Code = "wheat";

    /// <summary>The table in use and its version; version 0 is the program's own.</summary>
    public static (EmcTable Table, int Version, string By) Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(EmcJson.PaperKind).Newest(Code) is { } paper && EmcJson.TryRead(paper.Json, out var table, out _)
            ? (table, paper.Version, paper.By)
            : (EmcTable.Start, 0, "");
    }

    /// <summary>Keeps a table as the next version; the one in use once more changes nothing.</summary>
    /// <returns>The version it is kept as.</returns>
    /// <exception cref="ArgumentException">The table has faults; the message says which.</exception>
    public static int Keep(Mill mill, EmcTable table, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(table);
        if (table.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(table));
        }

        var shelf = mill.Papers(EmcJson.PaperKind);
        var (newest, json) = (shelf.Newest(Code), EmcJson.Write(table));
        if (newest?.Json == json)
        {
            return newest.Version;
        }

        var version = (newest?.Version ?? 0) + 1;
        shelf.Keep(Code, version, json, by);
        return version;
    }
}
