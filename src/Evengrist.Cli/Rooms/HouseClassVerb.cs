using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Keeps a version of one of the mill's own classes of wheat, or lists those kept.</summary>
internal static class HouseClassVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string?>("--in") { Description = "the class as JSON, as in a grade case; without it the classes kept are listed", HelpName = "FILE" };
        var by = new Option<string?>("--by") { Description = "who decided it", HelpName = "NAME" };
        var command = new Command("house-class", "Keeps a version of one of the mill's own classes of wheat with its bands; a version once kept never changes.") { file, by };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            if (asked.GetValue(file) is not { } name)
            {
                using var shelf = where.Open(asked, clock);
                foreach (var paper in shelf.Papers(HouseClassJson.Kind).All())
                {
                    voice.Say($"{paper.Code} version {paper.Version}, kept by {paper.By}");
                }

                return Exit.Done;
            }

            var who = asked.GetValue(by) ?? throw new BadInput(new Fault(null, null, "--by", "", "who decided this: give a name"));
            using var reader = new StreamReader(Files.Open(name));
            if (!HouseClassJson.TryRead(reader.ReadToEnd(), out var house, out var faults))
            {
                return voice.Refuse(faults.Select(f => Fault.OfFile(name, $"a house class that can be. {f}")));
            }

            using var mill = where.Open(asked, clock);
            try
            {
                mill.Keep(house, who);
            }
            catch (LedgerRefusal refusal)
            {
                return voice.Refuse([new Fault(null, null, "version", house.Version.ToString(System.Globalization.CultureInfo.InvariantCulture), $"a version not kept yet. {refusal.Message}")]);
            }

            voice.Say($"House class {house.Code}, version {house.Version}, is kept.");
            return Exit.Done;
        });
        return command;
    }
}
