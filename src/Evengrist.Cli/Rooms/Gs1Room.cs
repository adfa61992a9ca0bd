using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Gs1;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Codes on bags and pallets by the rules of GS1.</summary>
internal static class Gs1Room
{
    public static Command Of(Voice voice, IClock clock) => new("gs1", "Codes on bags and pallets: what a symbol says, how it is written, labels.")
    {
        Parse(voice, clock),
        Make(voice, clock),
        Gs1NumberVerb.Of(voice),
        Gs1LabelVerb.Of(voice, clock),
    };

    /// <summary>This year, which tells the century of a year of two digits.</summary>
    public static int Year(IClock clock) => clock.GetCurrentInstant().InUtc().Year;

    private static Command Parse(Voice voice, IClock clock)
    {
        var text = new Argument<string>("TEXT") { Description = "what a scanner sent, the line with brackets, a link or an EPC URI; - for standard input" };
        var shared = new Gs1Options();
        var command = new Command("parse", "What a symbol says: checked against GS1's table of application identifiers, element by element, or every fault with its place. Needs no records.") { text };
        shared.AddTo(command);
        command.SetAction(asked =>
        {
            var given = asked.GetValue(text)!;
            return shared.Answer(asked, voice, ScannedText.Read(given == "-" ? Console.In.ReadToEnd() : given, Year(clock), shared.Whole(asked)), Year(clock));
        });
        return command;
    }

    private static Command Make(Voice voice, IClock clock)
    {
        var pairs = new Argument<string[]>("ELEMENT") { Description = "application identifier and value, such as 01=09521234002017 10=WB-251007-3", Arity = ArgumentArity.OneOrMore };
        var symbol = new Gs1SymbolOption();
        var shared = new Gs1Options();
        var command = new Command("make", "Puts elements together: checked, in the order that needs fewest separators, as a scanner sends them, with brackets, as a link; on request as a symbol. Needs no records.") { pairs };
        shared.AddTo(command);
        symbol.AddTo(command);
        command.SetAction(asked =>
        {
            var made = ElementString.Make([.. asked.GetValue(pairs)!.Select(Pair)], Year(clock), shared.Whole(asked));
            symbol.Write(asked, voice, made);
            return shared.Answer(asked, voice, made, Year(clock));
        });
        return command;
    }

    private static (string Code, string Value) Pair(string written)
    {
        var sides = written.Split('=', 2);
        return sides.Length == 2 ? (sides[0].Trim('(', ')'), sides[1]) : throw new BadInput(new Fault(null, null, "ELEMENT", Fault.Show(written), "an application identifier, = and its value, such as 10=WB-251007-3"));
    }
}
