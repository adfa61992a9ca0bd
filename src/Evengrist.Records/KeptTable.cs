using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Records;

/// <summary>Reads a table from JSON; false with each fault a sentence.</summary>
public delegate bool TableReading<T>(string json, [NotNullWhen(true)] out T? table, out IReadOnlyList<string> faults)
    where T : class;

/// <summary>A table that a mill keeps for itself, by version: the newest is used; before there is one, the program's own.</summary>
/// <param name="kind">Kind of its paper.</param>
/// <param name="code">Code of its paper.</param>
/// <param name="start">The program's own.</param>
/// <param name="read">Reads and checks it.</param>
/// <param name="write">Writes it.</param>
public sealed class KeptTable<T>(string kind, string code, T start, TableReading<T> read, Func<T, string> write)
    where T : class
{
    /// <summary>The table in use and its version; version 0 is the program's own.</summary>
    public (T Table, int Version, string By) Newest(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Papers(kind).Newest(code) is { } paper && read(paper.Json, out var table, out _) ? (table, paper.Version, paper.By) : (start, 0, "");
    }

    /// <summary>Keeps a table as the next version; the one in use once more changes nothing.</summary>
    /// <returns>The version it is kept as.</returns>
    /// <exception cref="ArgumentException">The table has faults; the message says which.</exception>
    public int Keep(Mill mill, T table, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(table);
        var json = write(table);
        if (!read(json, out _, out var faults))
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(table));
        }

        return mill.Papers(kind).KeepNext(code, json, by);
    }
}
