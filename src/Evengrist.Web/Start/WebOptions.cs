namespace Evengrist.Web.Start;

/// <summary>What the command line asks of the web app.</summary>
/// <param name="DataFolder">Where the records, their backups and the form keys lie.</param>
/// <param name="Postgres">Connection string of a shared PostgreSQL database; null for the embedded SQLite file.</param>
/// <param name="Empty">A mill of one's own, empty at its first start, instead of the demonstration.</param>
/// <param name="ResetDemo">Lay the demonstration out anew.</param>
/// <param name="Urls">Addresses asked for, loopback only; null for the first free port of ours.</param>
public sealed record WebOptions(string DataFolder, string? Postgres = null, bool Empty = false, bool ResetDemo = false, string? Urls = null)
{
    /// <summary>What <c>--help</c> prints.</summary>
    public const string Usage = """
        Evengrist: the head miller's tool. Starts the web app on this machine alone.

          --data PATH        folder for the records (default: your local data folder, evengrist)
          --postgres CONN    keep the records in a shared PostgreSQL database instead of a file
          --empty            open a mill of your own, empty at its first start, instead of the demonstration
          --reset-demo       throw the demonstration's records away and lay it out anew
          --urls URL         loopback address to listen on (default: http://127.0.0.1:5180 or the next free port)
          --help             this text
        """;

    private static readonly string[] Flags = ["--empty", "--reset-demo", "--help"];
    private static readonly string[] Values = ["--data", "--postgres", "--urls"];

    /// <summary>Whether only the usage was asked for.</summary>
    public bool Help { get; init; }

    /// <summary>Reads the command line: <c>--name value</c> or <c>--name=value</c>.</summary>
    /// <exception cref="StartRefusal">An option is unknown, lacks its value, or contradicts another.</exception>
    public static WebOptions Read(IReadOnlyList<string> args)
    {
        ArgumentNullException.ThrowIfNull(args);
        var given = new Dictionary<string, string>(StringComparer.Ordinal);
        for (var i = 0; i < args.Count; i++)
        {
            var (name, value) = args[i].Split('=', 2) is [var left, var right] ? (left, right) : (args[i], null);
            if (Flags.Contains(name) && value is null)
            {
                given[name] = "";
            }
            else if (Values.Contains(name))
            {
                given[name] = value ?? (i + 1 < args.Count && !args[i + 1].StartsWith("--", StringComparison.Ordinal)
                    ? args[++i]
                    : throw new StartRefusal($"{name} needs a value after it. --help lists the options."));
            }
            else
            {
                throw new StartRefusal($"Unknown option {args[i]}. --help lists the options.");
            }
        }

        var options = new WebOptions(
            given.GetValueOrDefault("--data") ?? DefaultDataFolder(), given.GetValueOrDefault("--postgres"),
            given.ContainsKey("--empty"), given.ContainsKey("--reset-demo"), given.GetValueOrDefault("--urls"))
        {
            Help = given.ContainsKey("--help"),
        };
        return options is { Empty: true, ResetDemo: true }
            ? throw new StartRefusal("--empty opens a mill of your own and --reset-demo lays the demonstration out anew: give one of the two.")
            : options;
    }

    private static string DefaultDataFolder() =>
        Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.Create), "evengrist");
}
