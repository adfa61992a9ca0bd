using System.Data.Common;
using System.Diagnostics;
using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Tests.Stores;
using Microsoft.Data.Sqlite;
using NodaTime;
using Npgsql;

namespace Evengrist.Bench.Records;

/// <summary><c>records</c>: how fast facts are recorded and read back, beside the bare engine in the same run.</summary>
internal static class RecordsBench
{
    private const int Batch = 5_000, Facts = 200_000, Singles = 1_500, YearFacts = 660_000;

    public static int Run()
    {
        Console.WriteLine($"{Environment.ProcessorCount} cores (load average {LoadAverage()}), {System.Runtime.InteropServices.RuntimeInformation.FrameworkDescription}, {System.Runtime.InteropServices.RuntimeInformation.OSDescription}");
        Console.WriteLine($"Batches: {Facts:N0} facts in batches of about {Batch:N0}, rules checked, each batch flushed to disk. Singles: {Singles:N0} movements, each recorded and flushed alone.");
        Console.WriteLine("Bare engine: movement rows alone with their two indexes, prepared single-row inserts, no rules, key look-up, foreign keys or triggers, same flushing.");
        Console.WriteLine();
        Console.WriteLine("| engine | what | ours per s | bare per s | bare/ours | goal per s | ours, µs of our processor time each |");
        Console.WriteLine("|---|---|---:|---:|---:|---:|---:|");
        PostgresCluster.Flushes = true;
        var folder = Directory.CreateTempSubdirectory("evengrist-bench-").FullName;
        try
        {
            var file = Path.Combine(folder, "mill.db");
            Write("SQLite", MillOptions.InFile(file), () => Sqlite(Path.Combine(folder, "raw.db")));
            if (PostgresCluster.Missing is { } missing)
            {
                Console.WriteLine($"| PostgreSQL | skipped: {missing} | | | | | |");
            }
            else
            {
                Write("PostgreSQL", MillOptions.Shared(PostgresCluster.NewDatabase()), () => Postgres(PostgresCluster.NewDatabase()));
            }

            Console.WriteLine();
            Reopen("SQLite", MillOptions.InFile(file));
            Console.WriteLine($"File: {new FileInfo(file).Length / 1e6:F0} MB.");
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }

        return 0;
    }

    private static void Write(string engine, MillOptions options, Func<DbConnection> bare)
    {
        using var mill = Mill.Open(options, SystemClock.Instance);
        mill.Record(Year.Plant, "bench", "bench");
        var count = 0;
        var batches = Year.Batches(Batch).TakeWhile(b => (count += b.Count) <= Facts + Batch).ToList();
        var before = Processor();
        var facts = batches.Sum(b => b.Count);
        var ours = facts / Seconds(() => batches.ForEach(b => mill.Record(b, "bench", "bench")));
        var work = (Processor() - before) / facts;
        using var raw = new RawEngine(bare());
        var theirs = Facts / Seconds(() =>
        {
            for (var done = 0; done < Facts; done += Batch)
            {
                raw.Insert(Batch);
            }
        });
        Row(engine, "facts in batches", ours, theirs, 30_000, work);

        var at = Instant.FromUtc(2026, 7, 1, 0, 0);
        before = Processor();
        ours = Singles / Seconds(() =>
        {
            for (var n = 0; n < Singles; n++)
            {
                mill.Record([new Move($"single{n}", "FLOUR", "LINE", Mass.FromGrams(1), at + Duration.FromSeconds(n))], "bench", "bench");
            }
        });
        work = (Processor() - before) / Singles;
        theirs = Singles / Seconds(() =>
        {
            for (var n = 0; n < Singles; n++)
            {
                raw.Insert(1);
            }
        });
        Row(engine, "single facts", ours, theirs, 300, work);
    }

    private static void Reopen(string engine, MillOptions options)
    {
        using (var mill = Mill.Open(options, SystemClock.Instance))
        {
            var have = mill.Ask(v => v.Book.Last.Value);
            var count = 0;
            foreach (var batch in Year.Batches(Batch).SkipWhile(b => (count += b.Count) < Facts - Batch).TakeWhile(_ => have < YearFacts))
            {
                mill.Record(batch, "bench", "bench");
                have = mill.Ask(v => v.Book.Last.Value);
            }
        }

        for (var run = 1; run <= 3; run++)
        {
            var (places, movements, readings) = (0, 0, 0);
            var seconds = Seconds(() =>
            {
                using var mill = Mill.Open(options, SystemClock.Instance);
                (places, movements, readings) = mill.Ask(v => (v.Book.Places.Count, v.Book.Movements.Count, v.Book.Readings.Count));
            });
            Console.WriteLine($"{engine}: {places:N0} places, {movements:N0} movements, {readings:N0} readings opened in {seconds:F2} s (goal 2 s).");
        }
    }

    private static SqliteConnection Sqlite(string path)
    {
        var connection = new SqliteConnection($"Data Source={path};Pooling=false");
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; PRAGMA cache_size = -32000";
        command.ExecuteNonQuery();
        return connection;
    }

    private static NpgsqlConnection Postgres(string connectionString)
    {
        var connection = new NpgsqlConnection(connectionString);
        connection.Open();
        return connection;
    }

    private static double Seconds(Action action)
    {
        var watch = Stopwatch.StartNew();
        action();
        return watch.Elapsed.TotalSeconds;
    }

    private static double Processor() => Process.GetCurrentProcess().TotalProcessorTime.TotalSeconds;

    private static string LoadAverage() => File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Split(' ')[0] : "not known";

    private static void Row(string engine, string what, double ours, double theirs, double goal, double work) =>
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {engine} | {what} | {ours:N0} | {theirs:N0} | {theirs / ours:F2} | {goal:N0} | {work * 1e6:N0} |"));
}
