using Evengrist.Records.Engines;
using Evengrist.Records.Model;
using Microsoft.Data.Sqlite;
using Microsoft.EntityFrameworkCore;

namespace Evengrist.Records.Opening;

/// <summary>Opens a file of facts: looks before it touches, keeps a backup before it changes tables.</summary>
internal static class SqliteDoor
{
    private const int Busy = 5, Locked = 6, ReadOnly = 8, InputOutput = 10, Corrupt = 11, Full = 13, CannotOpen = 14, NotADatabase = 26;

    public static Engine Open(string path, Action<MillProgress>? progress)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(path)!);
        using (DoorLock.Take(path))
        {
            SqliteFile.Look(path);
            var applied = SqliteFile.Applied(path);
            if (Versions.IsOutdated(applied, Versions.Of<SqliteContext>(), path))
            {
                if (applied.Count > 0)
                {
                    progress?.Invoke(new("Keeping a backup", 0, 0));
                    SqliteFile.BackUp(path, applied[^1]);
                }

                progress?.Invoke(new("Bringing the tables up to date", 0, 0));
                Migrate(path);
            }

            return new SqliteEngine(path);
        }
    }

    public static string? Words(string path, Exception fault) => fault switch
    {
        SqliteException { SqliteErrorCode: Corrupt or NotADatabase } => $"{path} is damaged ({fault.Message}). Do not write to it: copy it away, put the newest backup in its place, and record again what came after.",
        SqliteException { SqliteErrorCode: Busy or Locked } => $"{path} is held by another program. Close that program, then try again.",
        SqliteException { SqliteErrorCode: ReadOnly } or UnauthorizedAccessException => $"{path} cannot be written. Allow this user to write the file and its folder, or give another path.",
        SqliteException { SqliteErrorCode: Full } => $"The disk of {path} is full. Make room, then try again.",
        SqliteException { SqliteErrorCode: CannotOpen or InputOutput } or IOException => $"{path} cannot be opened ({fault.Message}). Check the path, the disk and the rights of this user.",
        SqliteException => $"{path} cannot be used: {fault.Message}. If it was changed by hand, restore the newest backup.",
        _ => null,
    };

    private static void Migrate(string path)
    {
        using var context = SqliteContext.On(SqliteEngine.ConnectionString(path));

        // A process killed while it migrated leaves this row, and the next would wait for it for ever. The door is ours alone, so nobody migrates.
        if (SqliteFile.Has(path, Versions.Lock))
        {
            context.Database.ExecuteSqlRaw($"DELETE FROM \"{Versions.Lock}\"");
        }

        context.Database.Migrate();
    }
}
