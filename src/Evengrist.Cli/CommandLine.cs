using System.CommandLine;
using System.CommandLine.Help;
using Evengrist.Cli.Rooms;
using Evengrist.Cli.Said;
using Evengrist.Ledger;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Cli;

/// <summary>The program: verbs named after rooms.</summary>
public sealed class CommandLine(TextWriter output, TextWriter error, IClock clock)
{
    private readonly Voice voice = new(output, error);

    /// <summary>Runs one command and gives its exit status.</summary>
    public int Run(params IReadOnlyList<string> args)
    {
        var root = Root();
        var parsed = root.Parse(args);
        if (parsed.Errors.Count > 0 && parsed.Action is not HelpAction and not CaseHelpAction)
        {
            foreach (var fault in parsed.Errors)
            {
                error.WriteLine(fault.Message);
            }

            error.WriteLine("--help says how it is called.");
            return Exit.BadInput;
        }

        try
        {
            return parsed.Invoke(new InvocationConfiguration { Output = output, Error = error, EnableDefaultExceptionHandler = false });
        }
        catch (BadInput bad)
        {
            return voice.Refuse(bad.Faults);
        }
        catch (Exception refused) when (refused is MillCannotOpen or LedgerRefusal)
        {
            error.WriteLine(refused.Message);
            return Exit.BadInput;
        }
        catch (Exception ours)
        {
            error.WriteLine($"This is a fault of the program, not yours. What it recorded, it recorded whole. {ours}");
            return Exit.OurFault;
        }
    }

    private Command Root()
    {
        var root = new Command("evengrist", "Evengrist: what a flour mill holds, what leaves its bins next, where a bag came from and what a truck has reached.")
        {
            new HelpOption(), new VersionOption(),
            IntakeRoom.Of(voice, clock), BinsRoom.Of(voice, clock), MixRoom.Of(voice, clock), TemperingRoom.Of(voice), MillingRoom.Of(voice, clock), StreamsRoom.Of(voice, clock), LabRoom.Of(voice, clock), PackingRoom.Of(voice, clock), ReadingsRoom.Of(voice, clock), MovementsRoom.Of(voice, clock),
            Gs1Room.Of(voice, clock), TracingRoom.Of(voice, clock), EpcisRoom.Of(voice, clock), SeasonRoom.Of(voice), LedgerRoom.Of(voice, clock), MillRoom.Of(voice, clock), DemoRoom.Of(voice, clock),
        };
        CaseHelpAction.AttachTo(root);
        return root;
    }
}
