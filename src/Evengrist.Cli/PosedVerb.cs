using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli;

/// <summary>The options of a verb that reads a posed case.</summary>
internal sealed class PosedVerb
{
    private readonly Option<string?> file = new("--in") { Description = "the case as JSON; - for standard input", HelpName = "FILE" };
    private readonly Option<bool> json = new("--json") { Description = "answer in JSON, and nothing else on standard output" };

    /// <summary>Makes of a command a verb that reads a case and either answers it or says why it cannot.</summary>
    public static Command Of<TCase, TAnswer>(Command command, Voice voice, CaseHelp help, Func<Stream, Parsed<TCase>> read, Func<TCase, Reply<TAnswer>> reply, Action<TAnswer> say)
        where TCase : class
        where TAnswer : class
    {
        var posed = new PosedVerb();
        posed.AddTo(command, help);
        command.SetAction(asked => posed.Ask(asked, read, c => Parsing.Got(reply(c))) switch
        {
            { Answer: { } answer } => voice.Answer(posed.Json(asked), answer, say),
            var none => voice.NoAnswer(none.Reasons),
        });
        return command;
    }

    public void AddTo(Command command, CaseHelp help)
    {
        command.Add(file);
        command.Add(json);
        CaseHelpAction.Describe(command, help);
    }

    public bool Json(ParseResult asked) => asked.GetValue(json);

    public bool IsPosed(ParseResult asked) => asked.GetValue(file) is not null;

    /// <summary>The answer to the case in the file.</summary>
    public TAnswer Ask<TCase, TAnswer>(ParseResult asked, Func<Stream, Parsed<TCase>> read, Func<TCase, Parsed<TAnswer>> answer)
        where TCase : class
        where TAnswer : class
    {
        var name = asked.GetValue(file) ?? throw new BadInput(new Fault(null, null, "--in", "", "a file with the case; --help shows what it looks like"));
        using var stream = name == "-" ? Console.OpenStandardInput() : Files.Open(name);
        var parsed = read(stream).Then(answer);
        return parsed.Ok ? parsed.Value : throw new BadInput(parsed.Faults);
    }
}
