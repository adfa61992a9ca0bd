using System.Diagnostics;
using System.Net;
using System.Net.Sockets;
using Npgsql;

namespace Evengrist.Records.Tests.Stores;

/// <summary>A PostgreSQL cluster of the tests' own, on loopback in a temporary folder; made at first use, gone when the tests end.</summary>
public sealed class PostgresCluster
{
    private static readonly Lazy<PostgresCluster> Started = new(() => new PostgresCluster());
    private static readonly string? Programs = Directory.Exists("/usr/lib/postgresql")
        ? Directory.GetDirectories("/usr/lib/postgresql").Select(d => Path.Combine(d, "bin")).Where(d => File.Exists(Path.Combine(d, "initdb"))).Max()
        : null;

    // The server refuses to run as root.
    private static readonly string[] Owner = Environment.IsPrivilegedProcess ? ["runuser", "-u", "postgres", "--", "sh"] : ["sh"];

    private readonly string folder = Path.Combine(Path.GetTempPath(), "evengrist-pg-" + Guid.NewGuid().ToString("N")[..12]);
    private readonly int port = FreePort();
    private readonly Process undertaker;
    private int databases;

    private PostgresCluster()
    {
        Directory.CreateDirectory(folder);
        if (Environment.IsPrivilegedProcess)
        {
            Run("chown", "postgres", folder);
        }

        undertaker = StopWhenWeAreGone();
        AsOwner("initdb", "-A", "trust", "-U", "postgres", "-E", "UTF8", "--locale=C.UTF-8", "-D", Data);
        AsOwner("pg_ctl", "-D", Data, "-w", "-l", Path.Combine(folder, "log"), "-o", $"-p {port} -c fsync={(Flushes ? "on" : "off")} -c listen_addresses=127.0.0.1 -c unix_socket_directories={folder}", "start");
    }

    /// <summary>Whether every commit is flushed to disk; to be set before first use. No test kills the server, so tests do without.</summary>
    public static bool Flushes { get; set; }

    /// <summary>Why the half of the tests that needs PostgreSQL cannot run; null when it can.</summary>
    public static string? Missing => Programs is null ? "PostgreSQL (initdb and pg_ctl under /usr/lib/postgresql) is not installed" : null;

    private string Data => Path.Combine(folder, "data");

    /// <summary>A new empty database; its connection string.</summary>
    public static string NewDatabase()
    {
        var cluster = Started.Value;
        var name = "mill" + Interlocked.Increment(ref cluster.databases);
        using var connection = new NpgsqlConnection(cluster.ConnectionString("postgres"));
        connection.Open();
        using var command = connection.CreateCommand();
        command.CommandText = "CREATE DATABASE " + name;
        command.ExecuteNonQuery();
        return cluster.ConnectionString(name);
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    private static void Run(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments) { WorkingDirectory = "/" })!;
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{program} {string.Join(' ', arguments)} ended with {process.ExitCode}.");
        }
    }

    private string ConnectionString(string database) => $"Host=127.0.0.1;Port={port};Username=postgres;Database={database};Pooling=false";

    private static void AsOwner(string program, params string[] arguments) => Run(Owner[0], [.. Owner[1..], "-c", "exec \"$0\" \"$@\" > /dev/null 2>&1", Path.Combine(Programs!, program), .. arguments]);

    // A shell waits for the end of what we write to it, which comes however this process ends.
    private Process StopWhenWeAreGone() => Process.Start(new ProcessStartInfo(Owner[0],
        [.. Owner[1..], "-c", "cat > /dev/null; \"$0\" -D \"$1/data\" -m immediate stop > /dev/null 2>&1; rm -rf \"$1\"", Path.Combine(Programs!, "pg_ctl"), folder])
    { WorkingDirectory = "/", RedirectStandardInput = true })!;
}
