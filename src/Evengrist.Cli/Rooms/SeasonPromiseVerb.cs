using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Planning.Season;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli.Rooms;

/// <summary>A promise of a posed crop year: through which week each flour is on target, and how surely.</summary>
internal static class SeasonPromiseVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("promise", "Through which week each flour of a posed crop year is on target and how surely: futures of deliveries, quality, demand and readings, milled after the plan. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, SeasonPromiseCase.Help);
        var futures = NumberOption.Whole<int>("--futures", "how many futures; those of the case where left out");
        var seed = NumberOption.Whole<long>("--seed", "the seed; that of the case where left out");
        command.Add(futures);
        command.Add(seed);
        command.SetAction(asked => SeasonRoom.Reply(
            voice, posed.Json(asked),
            posed.Ask(asked, s => SeasonPromiseCase.Read(s).Then(c => c.With(asked.GetValue(futures), asked.GetValue(seed))), c => Parsing.Got(Reckoned(c, voice))), answer => Say(answer, voice)));
        return command;
    }

    private static Reply<SeasonPromiseAnswer> Reckoned(SeasonPromiseCase posed, Voice voice)
    {
        var (promise, plan) = SeasonQuestions.Promise(posed.Season, posed.Of, new Counting(voice, posed.Futures, "futures"));
        return SeasonPromiseAnswer.Of(promise, plan);
    }

    private static void Say(SeasonPromiseAnswer answer, Voice voice)
    {
        foreach (var sentence in answer.Sentences)
        {
            voice.Say(sentence);
        }

        voice.Say(answer.Basis);
        var table = new TextTable("flour", "stated through", "off by: 5 %", "50 %", "95 %", "to the end");
        foreach (var flour in answer.Flours)
        {
            table.Add(flour.Flour, flour.Through ?? "no week", flour.Early ?? "lasts", flour.Middle ?? "lasts", flour.Late ?? "lasts", string.Create(CultureInfo.InvariantCulture, $"{flour.Points[^1].Probability:0.00} ± {2 * flour.Points[^1].StandardError:0.00}"));
        }

        table.To(voice);
        voice.Say(string.Create(CultureInfo.InvariantCulture, $"{answer.Futures} futures in {answer.Seconds:0.0} s; the year costs {answer.MeanCost:#,##0} ± {answer.CostSpread:#,##0} from future to future."));
    }
}
