using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Gs1;
using Evengrist.Plant.Gs1.Links;
using Evengrist.Plant.Gs1.Symbols;

namespace Evengrist.Cli.Rooms;

/// <summary>Writes made elements as a symbol.</summary>
internal sealed class Gs1SymbolOption
{
    private readonly Option<string?> kind = new("--symbol") { Description = "bars (GS1-128), matrix (GS1 Data Matrix) or qr (the link)", HelpName = "KIND" };
    private readonly Option<string?> into = new("--out") { Description = "where the symbol is written as SVG", HelpName = "FILE" };

    public void AddTo(Command command)
    {
        command.Add(kind);
        command.Add(into);
    }

    public void Write(ParseResult asked, Voice voice, Parsed<ElementString> elements)
    {
        var (symbol, target) = (asked.GetValue(kind), asked.GetValue(into));
        if ((symbol is null) != (target is null))
        {
            throw new BadInput(new Fault(null, null, symbol is null ? "--symbol" : "--out", "", "both of --symbol and --out, or none"));
        }

        if (symbol is null)
        {
            return;
        }

        var drawn = symbol switch
        {
            "bars" => elements.Then(Gs1Symbols.Bars),
            "matrix" => elements.Then(Gs1Symbols.DataMatrix),
            "qr" => elements.Then(DigitalLinks.Write).Then(Gs1Symbols.Qr),
            _ => throw new BadInput(new Fault(null, null, "--symbol", Fault.Show(symbol), "bars, matrix or qr")),
        };
        var svg = drawn.Ok ? SymbolSvg.Write(drawn.Value) : throw new BadInput(drawn.Faults);
        using var file = new StreamWriter(Files.Create(target!));
        file.Write(svg);
        voice.Tell($"The symbol is in {target}.");
    }
}
