namespace Evengrist.Records;

/// <summary>Where the facts lie: in a file of this machine, or in a PostgreSQL database that several machines share.</summary>
public sealed record MillOptions
{
    private MillOptions(string? path, string? postgres) => (Path, Postgres) = (path, postgres);

    /// <summary>Full path of the file; null when the database is shared.</summary>
    public string? Path { get; }

    /// <summary>The connection string of the shared database; null when a file is used.</summary>
    public string? Postgres { get; }

    /// <summary>One file on a disk of this machine; made when it is not there. Not for a network share: use a shared database there.</summary>
    public static MillOptions InFile(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        return new(System.IO.Path.GetFullPath(path), null);
    }

    /// <summary>A PostgreSQL database, for more than one machine.</summary>
    public static MillOptions Shared(string connectionString)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(connectionString);
        return new(null, connectionString);
    }
}
