using Evengrist.Records.Engines;
using Microsoft.Data.Sqlite;

namespace Evengrist.Records.Opening;

/// <summary>What a database file says of itself, found out without writing to it.</summary>
internal static class SqliteFile
{
    private const string Tables = "SELECT name FROM sqlite_master WHERE type = 'table'";

    /// <exception cref="MillCannotOpen">It is something else than a database, or may not be written.</exception>
    public static void Look(string path)
    {
        if (Directory.Exists(path))
        {
            throw new MillCannotOpen($"{path} is a folder. Give the path of a file in it.");
        }

        if (!File.Exists(path))
        {
            return;
        }

        if (File.GetAttributes(path).HasFlag(FileAttributes.ReadOnly))
        {
            throw new MillCannotOpen($"{path} is read-only. Allow this user to write it, or copy it to where it may be written and open the copy.");
        }

        using var file = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete);
        var head = new byte[16];
        var read = file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false);
        if (read > 0 && !head.AsSpan(0, read).SequenceEqual("SQLite format 3\0"u8))
        {
            throw new MillCannotOpen($"{path} is not a database of facts, or its beginning is damaged. Was another file meant? If not, put the newest backup in its place. The file was not touched.");
        }
    }

    /// <summary>The versions applied to the file, oldest first; none for a file that is not there or is empty.</summary>
    /// <exception cref="MillCannotOpen">It holds tables of another program.</exception>
    public static IReadOnlyList<string> Applied(string path)
    {
        if (!File.Exists(path) || new FileInfo(path).Length == 0)
        {
            return [];
        }

        using var connection = ForReading(path);
        var tables = Texts(connection, Tables);
        if (tables.Contains(Versions.History))
        {
            return Texts(connection, $"SELECT \"MigrationId\" FROM \"{Versions.History}\" ORDER BY 1");
        }

        return tables.All(t => t == Versions.Lock) ? [] : throw new MillCannotOpen($"{path} is a database of another program. Give another path. The file was not touched.");
    }

    public static bool Has(string path, string table)
    {
        if (!File.Exists(path))
        {
            return false;
        }

        using var connection = ForReading(path);
        return Texts(connection, Tables).Contains(table);
    }

    /// <summary>Copies the whole database, what still lies in its log included, beside the file: <c>mill.backup-VERSION.db</c>.</summary>
    public static void BackUp(string path, string version)
    {
        var stem = Path.Combine(Path.GetDirectoryName(path)!, Path.GetFileNameWithoutExtension(path)) + ".backup-" + version;
        var target = stem + ".db";
        for (var copy = 2; File.Exists(target); copy++)
        {
            target = $"{stem}-{copy}.db";
        }

        using var from = ForReading(path);
        using var to = new SqliteConnection(SqliteEngine.ConnectionString(target));
        to.Open();
        from.BackupDatabase(to);
    }

    private static SqliteConnection ForReading(string path)
    {
        var connection = new SqliteConnection(SqliteEngine.ConnectionString(path, SqliteOpenMode.ReadOnly));
        connection.Open();
        return connection;
    }

    private static List<string> Texts(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
#pragma warning disable CA2100 // the statements are our own constants
        command.CommandText = sql;
#pragma warning restore CA2100
        using var row = command.ExecuteReader();
        var texts = new List<string>();
        while (row.Read())
        {
            texts.Add(row.GetString(0));
        }

        return texts;
    }
}
