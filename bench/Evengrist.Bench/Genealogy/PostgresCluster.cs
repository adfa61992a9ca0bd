using System.Diagnostics;
using System.Net;
using System.Net.Sockets;

namespace Evengrist.Bench.Genealogy;

/// <summary>A private PostgreSQL server on a loopback port and a folder of its own, gone when disposed of.</summary>
internal sealed class PostgresCluster : IDisposable
{
    private readonly string binaries;
    private readonly string folder;

    private PostgresCluster(string binaries, string folder, int port)
    {
        (this.binaries, this.folder) = (binaries, folder);
        ConnectionString = $"Host=127.0.0.1;Port={port};Username=bench;Database=postgres;Pooling=False";
    }

    public string ConnectionString { get; }

    /// <summary>Starts a server, or says why there is none.</summary>
    public static PostgresCluster? Start(string parent, out string missing)
    {
        missing = "no initdb on PATH or in /usr/lib/postgresql/*/bin";
        var binaries = (Environment.GetEnvironmentVariable("PATH") ?? "").Split(Path.PathSeparator)
            .Concat(Directory.Exists("/usr/lib/postgresql")
                ? Directory.GetDirectories("/usr/lib/postgresql").OrderDescending().Select(version => Path.Combine(version, "bin"))
                : [])
            .FirstOrDefault(bin => bin.Length > 0 && File.Exists(Path.Combine(bin, "initdb")));
        if (binaries is null)
        {
            return null;
        }

        var folder = Directory.CreateDirectory(Path.Combine(parent, "cluster")).FullName;
        var cluster = new PostgresCluster(binaries, folder, FreePort());
        try
        {
            if (Environment.IsPrivilegedProcess)
            {
                Execute("chmod", "711", parent);
                Execute("chown", "postgres", folder);
            }

            var port = new Npgsql.NpgsqlConnectionStringBuilder(cluster.ConnectionString).Port;
            cluster.AsServer("initdb", "-D", folder, "-U", "bench", "-A", "trust", "--no-sync", "-E", "UTF8", "--no-locale");
            cluster.AsServer("pg_ctl", "-D", folder, "-w", "-l", Path.Combine(folder, "server.log"), "-o",
                $"-p {port} -c listen_addresses=127.0.0.1 -c unix_socket_directories='' -c fsync=off -c shared_buffers=1GB "
                + "-c work_mem=256MB -c maintenance_work_mem=512MB", "start");
            AppDomain.CurrentDomain.ProcessExit += cluster.StopAtExit;
            return cluster;
        }
        catch (InvalidOperationException e)
        {
            missing = e.Message;
            return null;
        }
    }

    public void Dispose()
    {
        AppDomain.CurrentDomain.ProcessExit -= StopAtExit;
        AsServer("pg_ctl", "-D", folder, "-m", "immediate", "-w", "stop");
    }

    // A run broken off by the keyboard must leave no server behind either.
    private void StopAtExit(object? sender, EventArgs e) => Dispose();

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }

    // The server refuses to run as root, so root hands over to the user that Debian's package makes.
    private void AsServer(string program, params string[] arguments)
    {
        var path = Path.Combine(binaries, program);
        if (Environment.IsPrivilegedProcess)
        {
            Execute("runuser", ["-u", "postgres", "--", path, .. arguments]);
        }
        else
        {
            Execute(path, arguments);
        }
    }

    private static void Execute(string program, params string[] arguments)
    {
        using var process = Process.Start(new ProcessStartInfo(program, arguments)
        {
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            WorkingDirectory = "/",
        }) ?? throw new InvalidOperationException($"{program} did not start");
        process.OutputDataReceived += (_, _) => { };
        process.BeginOutputReadLine();
        var errors = process.StandardError.ReadToEnd();
        process.WaitForExit();
        if (process.ExitCode != 0)
        {
            throw new InvalidOperationException($"{Path.GetFileName(program)} ended with {process.ExitCode}: {errors.Trim()}");
        }
    }
}
