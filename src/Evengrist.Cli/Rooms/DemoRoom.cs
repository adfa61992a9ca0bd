using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Demo;
using Evengrist.Plant;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>The demonstration mill: an invented crop year.</summary>
internal static class DemoRoom
{
    private static readonly string[] Sides = ["", "-wal", "-shm"];

    public static Command Of(Voice voice, IClock clock) => new("demo", "The demonstration mill: an invented crop year.")
    {
        Verb("load", "Lays the demonstration out where no mill lies yet, or goes on where it was stopped.", voice, clock, (_, _) => { }),
        Verb("reset", "Throws the demonstration's records away and lays it out anew (stop the web app first). A mill of one's own is never touched.", voice, clock, Discard),
    };

    private static Command Verb(string name, string meaning, Voice voice, IClock clock, Action<MillOptions, IClock> before)
    {
        var where = new MillOption();
        var command = new Command(name, meaning);
        where.AddTo(command, demo: false);
        command.SetAction(asked =>
        {
            var options = where.Options(asked, isDemonstration: true);
            before(options, clock);
            if (options.Path is { } path)
            {
                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            }

            using var mill = Mill.Open(options, clock);
            if (!mill.Settings.IsDemonstration && mill.Ask(view => view.Book.Last) != default)
            {
                throw new BadInput(new Fault(null, null, "--data", Fault.Show(options.Path ?? "the shared database"), "an empty mill or the demonstration; this one holds facts of its own and is left as it is"));
            }

            var told = 0;
            DemonstrationMill.Load(mill, progress =>
            {
                var tenth = (int)(progress.Share * 10);
                if (tenth > told)
                {
                    told = tenth;
                    voice.Say(string.Create(CultureInfo.InvariantCulture, $"{progress.Day:uuuu-MM-dd}: {progress.Facts} facts"));
                }
            });
            voice.Say($"The demonstration lies in {options.Path ?? "the shared database"}. All of it is invented.");
            return Exit.Done;
        });
        return command;
    }

    private static void Discard(MillOptions options, IClock clock)
    {
        if (options.Path is not { } path)
        {
            throw new BadInput(new Fault(null, null, "--postgres", "", "a folder: facts in a shared database are never thrown away by this program; load into an empty database instead"));
        }

        if (!File.Exists(path))
        {
            return;
        }

        using (var mill = Mill.Open(options, clock))
        {
            if (!mill.Settings.IsDemonstration)
            {
                throw new BadInput(new Fault(null, null, "--data", Fault.Show(path), "the demonstration; this is a mill of one's own and is left as it is"));
            }
        }

        foreach (var side in Sides)
        {
            File.Delete(path + side);
        }
    }
}
