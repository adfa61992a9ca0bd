using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Keeps a version of a contract, or lists those kept.</summary>
internal static class ContractVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string?>("--in") { Description = "the contract as JSON, as in a settle case; without it the contracts kept are listed", HelpName = "FILE" };
        var by = new Option<string?>("--by") { Description = "who agreed it", HelpName = "NAME" };
        var command = new Command("contract", "Keeps a version of a contract with its scales; a version once kept never changes.") { file, by };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            if (asked.GetValue(file) is not { } name)
            {
                using var shelf = where.Open(asked, clock);
                foreach (var paper in shelf.Contracts.All())
                {
                    voice.Say($"{paper.Code} version {paper.Version}, kept by {paper.By}");
                }

                return Exit.Done;
            }

            var who = asked.GetValue(by) ?? throw new BadInput(new Fault(null, null, "--by", "", "who agreed this: give a name"));
            using var reader = new StreamReader(name == "-" ? Console.OpenStandardInput() : Files.Open(name));
            if (!TermsJson.TryRead(reader.ReadToEnd(), out var terms, out var faults))
            {
                return voice.Refuse(faults.Select(f => Fault.OfFile(name, $"a contract that can be. {f}")));
            }

            using var mill = where.Open(asked, clock);
            try
            {
                mill.Keep(terms, who);
            }
            catch (LedgerRefusal refusal)
            {
                return voice.Refuse([new Fault(null, null, "version", terms.Version.ToString(System.Globalization.CultureInfo.InvariantCulture), $"a version not kept yet. {refusal.Message}")]);
            }

            voice.Say($"Contract {terms.Code}, version {terms.Version}, is kept.");
            return Exit.Done;
        });
        return command;
    }
}
