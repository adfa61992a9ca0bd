using System.CommandLine;
using Evengrist.Plant;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Cli;

/// <summary>Which mill a command is about: a folder or file of this machine, or a shared database.</summary>
internal sealed class MillOption
{
    private const string OwnFile = "mill.db";
    private const string DemonstrationFile = "demonstration.db";

    private readonly Option<string?> data = new("--data") { Description = "folder (or .db file) with the mill's records; the web app's folder when left out", HelpName = "PATH" };
    private readonly Option<string?> postgres = new("--postgres") { Description = "connection string of a shared PostgreSQL database", HelpName = "CONN" };
    private readonly Option<bool> demonstration = new("--demo") { Description = "the demonstration mill of the folder, not one's own" };

    public void AddTo(Command command, bool demo = true)
    {
        command.Add(data);
        command.Add(postgres);
        if (demo)
        {
            command.Add(demonstration);
        }
    }

    /// <summary>Opens the mill, which must be there already.</summary>
    public Mill Open(ParseResult asked, IClock clock)
    {
        var options = Options(asked, asked.GetResult(demonstration) is not null && asked.GetValue(demonstration));
        return options.Path is { } path && !File.Exists(path)
            ? throw new BadInput(new Fault(null, null, "--data", Fault.Show(path), "a mill's records; start a mill of your own with: evengrist mill new --data PATH"))
            : Mill.Open(options, clock);
    }

    /// <summary>Where the mill lies.</summary>
    public MillOptions Options(ParseResult asked, bool isDemonstration)
    {
        var (path, shared) = (asked.GetValue(data), asked.GetValue(postgres));
        if (path is not null && shared is not null)
        {
            throw new BadInput(new Fault(null, null, "--postgres", "both", "one of --data and --postgres"));
        }

        if (shared is not null)
        {
            return MillOptions.Shared(shared);
        }

        path ??= Path.Combine(Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData), "evengrist");
        return MillOptions.InFile(path.EndsWith(".db", StringComparison.OrdinalIgnoreCase) ? path : Path.Combine(path, isDemonstration ? DemonstrationFile : OwnFile));
    }
}
