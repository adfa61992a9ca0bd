using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;

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

    /// <summary>Keeps a table as the version after one that was looked at, so that nobody's is overwritten unseen; every fault where it cannot be, and then nothing is kept.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="table">The table.</param>
    /// <param name="by">Who keeps it.</param>
    /// <param name="after">The version it follows; 0 for the program's own.</param>
    public IReadOnlyList<string> KeepAfter(Mill mill, T table, string by, int after)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(table);
        var json = write(table);
        var (newest, version, other) = Newest(mill);
        if (!read(json, out _, out var faults))
        {
            return faults;
        }

        if (version != after)
        {
            return [$"Version {version} was kept meanwhile by {other}. Look at it in another tab first, then send this again."];
        }

        if (write(newest) == json)
        {
            return ["Nothing is changed: it says what is kept already."];
        }

        try
        {
            mill.Papers(kind).Keep(code, version + 1, json, by);
            return [];
        }
        catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
        {
            return ["Another version was kept at this very time. Look at it in another tab first, then send this again."];
        }
    }

    /// <summary>Every version with its paper, the newest first; empty where only the program's own is used.</summary>
    public IReadOnlyList<(T Value, Paper Paper)> Versions(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(kind).All().Where(p => p.Code == code).Read(read).Reverse()];
    }
}
