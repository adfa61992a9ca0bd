using System.CommandLine;
using System.CommandLine.Help;
using System.CommandLine.Invocation;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli;

/// <summary>Help that also prints what a posed case looks like, with an example that works.</summary>
internal sealed class CaseHelpAction(HelpAction usual) : SynchronousCommandLineAction
{
    private static readonly Dictionary<Command, CaseHelp> Cases = [];

    /// <summary>Says which case a command reads.</summary>
    public static Command Describe(Command command, CaseHelp help)
    {
        Cases[command] = help;
        return command;
    }

    public static void AttachTo(Command root)
    {
        var help = root.Options.OfType<HelpOption>().Single();
        help.Action = new CaseHelpAction((HelpAction)help.Action!);
    }

    public override int Invoke(ParseResult parseResult)
    {
        var status = usual.Invoke(parseResult);
        if (Cases.TryGetValue(parseResult.CommandResult.Command, out var help))
        {
            var output = parseResult.InvocationConfiguration.Output;
            output.WriteLine("The case (--in FILE, or standard input), strictly read:");
            output.WriteLine(help.Schema);
            output.WriteLine();
            output.WriteLine("For example:");
            output.WriteLine(help.Example);
        }

        return status;
    }
}
