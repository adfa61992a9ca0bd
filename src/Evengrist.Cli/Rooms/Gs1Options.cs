using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Gs1;

namespace Evengrist.Cli.Rooms;

/// <summary>What reading and making of codes have in common.</summary>
internal sealed class Gs1Options
{
    private readonly Option<bool> json = new("--json") { Description = "answer in JSON, and nothing else on standard output" };
    private readonly Option<bool> part = new("--part") { Description = "this is one of several symbols on the item: companions are not asked for" };
    private readonly Option<int?> prefix = new("--prefix-length") { Description = "digits of the company prefix, 6 to 12; then an EPC URI is given too", HelpName = "DIGITS" };

    public void AddTo(Command command)
    {
        command.Add(part);
        command.Add(prefix);
        command.Add(json);
    }

    public bool Whole(ParseResult asked) => !asked.GetValue(part);

    public int Answer(ParseResult asked, Voice voice, Parsed<ElementString> elements, int year)
    {
        if (!elements.Ok)
        {
            throw new BadInput(elements.Faults);
        }

        var length = asked.GetValue(prefix);
        if (length is < 6 or > 12)
        {
            throw new BadInput(new Fault(null, null, "--prefix-length", FormattableString.Invariant($"{length}"), "6 to 12"));
        }

        return voice.Answer(asked.GetValue(json), Gs1Answer.Of(elements.Value, length, year), answer => Say(answer, voice));
    }

    private static void Say(Gs1Answer answer, Voice voice)
    {
        var table = new TextTable("code", "value", "says");
        foreach (var element in answer.Elements)
        {
            table.Add($"({element.Code})", element.Value, element.Says);
        }

        table.To(voice);
        voice.Say(answer.ForPeople);
        voice.Say($"sent: {answer.Transmitted.Replace($"{ElementString.Separator}", "<GS>", StringComparison.Ordinal)}");
        voice.Say(answer.Link is { } link ? $"link: {link}" : "link: none of these elements alone");
        if (answer.EpcUri is { } uri)
        {
            voice.Say($"EPC URI: {uri}");
        }
    }
}
