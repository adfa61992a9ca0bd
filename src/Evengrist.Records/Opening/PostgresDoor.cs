using Evengrist.Records.Engines;
using Evengrist.Records.Model;
using Microsoft.EntityFrameworkCore;
using Npgsql;

namespace Evengrist.Records.Opening;

/// <summary>Opens a shared database. Its backups are the business of whoever runs the server.</summary>
internal static class PostgresDoor
{
    public static Engine Open(string connectionString, Action<MillProgress>? progress)
    {
        var engine = new PostgresEngine(connectionString);
        try
        {
            if (Versions.IsOutdated(Applied(engine), Versions.Of<PostgresContext>(), Where(connectionString)))
            {
                progress?.Invoke(new("Bringing the tables up to date", 0, 0));
                using var context = PostgresContext.On(connectionString);
                context.Database.Migrate();
            }

            return engine;
        }
        catch
        {
            engine.Dispose();
            throw;
        }
    }

    public static string? Words(string connectionString, Exception fault) => fault switch
    {
        PostgresException { SqlState: "3D000" } => $"{Where(connectionString)} does not exist. Make it on the server (createdb), then start again.",
        PostgresException { SqlState: "28P01" or "28000" } => $"{Where(connectionString)} did not let this user in. Check user and password in the connection string.",
        PostgresException { SqlState: "42501" } => $"{Where(connectionString)}: this user may not do that ({fault.Message}). Grant it the right to make and use tables.",
        NpgsqlException => $"{Where(connectionString)} cannot be used: {fault.Message}. Check that the server runs and can be reached.",
        ArgumentException => $"The connection string is wrong: {fault.Message}",
        _ => null,
    };

    private static List<string> Applied(PostgresEngine engine)
    {
        var applied = new List<string>();
        if (engine.Number($"SELECT count(*) FROM pg_tables WHERE schemaname = current_schema() AND tablename = '{Versions.History}'") > 0)
        {
            using var command = engine.Command($"SELECT \"MigrationId\" FROM \"{Versions.History}\" ORDER BY 1");
            using var row = command.ExecuteReader();
            while (row.Read())
            {
                applied.Add(row.GetString(0));
            }
        }

        return applied;
    }

    // Never the connection string itself: it holds a password.
    private static string Where(string connectionString)
    {
        try
        {
            var parts = new NpgsqlConnectionStringBuilder(connectionString);
            return $"The database \"{parts.Database}\" on {parts.Host}:{parts.Port}";
        }
        catch (ArgumentException)
        {
            return "The shared database";
        }
    }
}
