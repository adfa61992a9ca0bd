using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Milling: the flow sheet.</summary>
internal static class MillingRoom
{
    public static Command Of(Voice voice) => new("milling", "The mill on paper: passages, rolls, cloths, and where each outlet leads.") { Sheet(voice), MillBalanceVerb.Of(voice) };

    private static Command Sheet(Voice voice)
    {
        var command = new Command("sheet", "Checks a flow sheet: every outlet leads somewhere, no stock is made, cloths lie in an order that divides, no loop is without a leak. Adds up what it has. Keeps nothing, needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, FlowSheetCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, FlowSheetCase.Read, s => Parsing.Got(FlowSheetAnswer.Of(s))), answer => Say(answer, voice)));
        return command;
    }

    private static void Say(FlowSheetAnswer answer, Voice voice)
    {
        voice.Say($"{answer.Name}: {answer.Passages} passages, {answer.Products.Count} products, wheat to {answer.FirstBreak}; no fault");
        var table = new TextTable("kind", "passages", "rolls m", "cloth m²", "codes");
        foreach (var kind in answer.Kinds)
        {
            table.Add(kind.Kind, $"{kind.Passages.Count}", kind.RollMillimetres > 0 ? Number(kind.RollMillimetres / 1000, 1) : "", Number(kind.ClothSquareMetres, 1), string.Join(' ', kind.Passages));
        }

        table.To(voice);
        voice.Say(answer.TonnesPerDay is { } tonnes
            ? $"for each 100 kg of wheat in 24 h at {Number(tonnes, 0)} t: rolls {Number(answer.RollMillimetresPer100Kilograms, 2)} mm (usually 10 to 12 for hard wheat, 11 to 14 for soft, from memory), sifter cloth {Number(answer.SifterSquareMetresPer100Kilograms, 3)} m² (0.05 to 0.08, from memory)"
            : "the sheet does not say what the unit is built for (tonnesPerDay), so that rolls and cloth for each 100 kg are not given");
        voice.Say(answer.Loops.Count == 0 ? "no stock goes back" : $"stock goes round, and all of it can leave: {string.Join("; ", answer.Loops.Select(l => string.Join(' ', l)))}");
        foreach (var product in answer.Products.GroupBy(p => p.Kind))
        {
            voice.Say($"{product.Key}: {string.Join(' ', product.Select(p => p.Code))}");
        }

        foreach (var caution in answer.Cautions)
        {
            voice.Say(caution);
        }
    }
}
