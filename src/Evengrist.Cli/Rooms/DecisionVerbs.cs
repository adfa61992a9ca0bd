using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Intake.Carrying;
using Evengrist.Intake.Deciding;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli.Rooms;

/// <summary>What to decide of a load, and what its route carries over into it.</summary>
internal static class DecisionVerbs
{
    public static Command Decide(Voice voice)
    {
        var command = new Command("decide", "Advises what to decide of a posed load: accept, discount, divert, set aside or turn away, by every rule that speaks. A named person decides. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, DecisionCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), DecisionAnswer.Of(posed.Ask(asked, DecisionCase.Read, c => Parsing.Got(DecisionModel.Advise(c.Load, c.House, c.Markets)))), answer =>
        {
            voice.Say($"Advised: {answer.Advised}");
            var table = new TextTable("rule says", "because", "source", "how known");
            foreach (var ruling in answer.Rulings)
            {
                table.Add(ruling.Kind, ruling.Reason, ruling.Source, ruling.Mark);
            }

            table.To(voice);
            foreach (var caution in answer.Rulings.Select(r => r.Caution).Where(c => c.Length > 0).Distinct())
            {
                voice.Say("Take care: " + caution);
            }

            if (answer.StillToAsk.Count > 0)
            {
                voice.Say("Still to ask: " + string.Join(", ", answer.StillToAsk));
            }

            voice.Say(answer.Note);
        }));
        return command;
    }

    public static Command CarryOver(Voice voice)
    {
        var command = new Command("carry-over", "Reckons how much of the last grain through pit and leg comes with the next load. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, CarryOverCase.Help);
        command.SetAction(asked =>
        {
            var outcome = posed.Ask(asked, CarryOverCase.Read, c => Parsing.Got(CarryOverModel.Of(c.Load, c.Spec, c.Threshold)));
            return voice.Answer(posed.Json(asked), CarryOverAnswer.Of(outcome), _ =>
            {
                voice.Say($"Carried over {outcome.Carried}, {outcome.Share} of the load; below {outcome.Threshold} % after {outcome.Until}.");
                voice.Say(outcome.Carried.Because!.Source);
            });
        });
        return command;
    }
}
