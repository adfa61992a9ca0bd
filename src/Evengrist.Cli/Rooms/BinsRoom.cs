using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Places of the mill, and what leaves a bin.</summary>
internal static class BinsRoom
{
    public static Command Of(Voice voice, IClock clock) => new("bins", "Places of the mill, and what leaves a bin.")
    {
        ImportVerb.Of(ImportKind.Bins, voice, clock), Outflow(voice), BinVerbs.Sound(voice), BinVerbs.Calibrate(voice), BinVerbs.Best(voice),
        StorageVerbs.Storage(voice), StorageVerbs.Equilibrium(voice), StorageVerbs.Aeration(voice),
    };

    private static Command Outflow(Voice voice)
    {
        var command = new Command("outflow", "What leaves a posed bin at each draw, by lot, under each hypothesis of how grain leaves it. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, OutflowCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, OutflowCase.Read, OutflowAnswer.To), answer => Say(answer, voice)));
        return command;
    }

    private static void Say(OutflowAnswer answer, Voice voice)
    {
        var all = answer.Draws.Append(answer.Left).ToArray();
        var hypotheses = all.SelectMany(d => d.Lots).SelectMany(l => l.Tonnes.Keys).Distinct().ToArray();
        var table = new TextTable(["drawn t", "lot", .. hypotheses.Select(h => $"{Amounts.Words(h)} t"), "least t", "most t"]);
        foreach (var draw in all)
        {
            var span = draw == answer.Left ? "left" : $"{Amounts.Tonnes(draw.FromTonnes)} to {Amounts.Tonnes(draw.UntilTonnes)}";
            foreach (var lot in draw.Lots)
            {
                table.Add([lot == draw.Lots[0] ? span : "", lot.Lot, .. hypotheses.Select(h => Amounts.Tonnes(lot.Tonnes[h])), Amounts.Tonnes(lot.Least), Amounts.Tonnes(lot.Most)]);
            }
        }

        table.To(voice);
        voice.Say("Reckoned. How grain leaves a bin is not seen: the hypotheses bound it only as far as one of them holds.");
    }
}
