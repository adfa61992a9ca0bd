using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>A mill of one's own.</summary>
internal static class MillRoom
{
    public static Command Of(Voice voice, IClock clock) => new("mill", "A mill of one's own.") { New(voice, clock) };

    private static Command New(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var name = new Option<string?>("--name") { Description = "what the mill is called", HelpName = "NAME" };
        var zone = new Option<string?>("--zone") { Description = "time zone of the site, such as Europe/Paris", HelpName = "ZONE" };
        var command = new Command("new", "Starts an empty mill. Bring its places in with: evengrist bins import.") { name, zone };
        where.AddTo(command, demo: false);
        command.SetAction(asked =>
        {
            var options = where.Options(asked, isDemonstration: false);
            if (options.Path is { } path)
            {
                if (File.Exists(path))
                {
                    throw new BadInput(new Fault(null, null, "--data", Fault.Show(path), "a place where no mill lies yet; this one is left as it is"));
                }

                Directory.CreateDirectory(Path.GetDirectoryName(path)!);
            }

            var id = asked.GetValue(zone) ?? "UTC";
            if (DateTimeZoneProviders.Tzdb.GetZoneOrNull(id) is null)
            {
                throw new BadInput(new Fault(null, null, "--zone", Fault.Show(id), "a zone of the tz database, such as America/Chicago or Europe/Paris"));
            }

            using var mill = Mill.Open(options, clock);
            mill.Set(mill.Settings with { Name = asked.GetValue(name) ?? "My mill", ZoneId = id });
            voice.Say($"An empty mill lies in {options.Path ?? "the shared database"}.");
            return Exit.Done;
        });
        return command;
    }
}
