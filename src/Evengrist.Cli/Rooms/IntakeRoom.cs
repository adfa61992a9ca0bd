using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Tickets, and what a load is worth under a contract.</summary>
internal static class IntakeRoom
{
    public static Command Of(Voice voice, IClock clock)
    {
        var room = new Command("intake", "Tickets of trucks and railcars.")
        {
            ImportVerb.Of(ImportKind.Intake, voice, clock), TicketVerb.Of(voice, clock), YardVerb.Of(voice), Settle(voice), StatementVerbs.Statement(voice, clock), StatementVerbs.Season(voice, clock), Grade(voice), HouseClassVerb.Of(voice, clock), ContractVerb.Of(voice, clock), DecisionVerbs.Decide(voice), DecisionVerbs.CarryOver(voice),
        };
        foreach (var verb in SamplingVerbs.Of(voice))
        {
            room.Add(verb);
        }

        return room;
    }

    private static Command Settle(Voice voice)
    {
        var command = new Command("settle", "Settles a posed load under a posed contract, line by line: net, clean and settled mass, bushels, price, pay. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, SettlementCase.Help);
        command.SetAction(asked => posed.Ask(asked, SettlementCase.Read, c => Parsing.Got(SettlementModel.Settle(c.Delivery, c.Terms))) switch
        {
            Settlement settled => voice.Answer(posed.Json(asked), SettlementAnswer.Of(settled), answer => Say(answer, voice)),
            NotSettled refused => voice.NoAnswer(refused.Reasons),
            var other => throw new InvalidOperationException($"A settlement ended as {other.GetType().Name}."),
        });
        return command;
    }

    private static Command Grade(Voice voice)
    {
        var command = new Command("grade", "Grades a posed sample by a standard or a house class: grade, deciding factor, distances, special grades. Needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, GradeCase.Help);
        command.SetAction(asked => posed.Ask(asked, GradeCase.Read, c => Parsing.Got(GradeModel.Grade(c.Standard, c.Sample))) switch
        {
            Graded graded => voice.Answer(posed.Json(asked), GradeAnswer.Of(graded), answer => GradeWords.Say(answer, voice)),
            NotGraded not => voice.NoAnswer([.. not.Reasons, .. not.AtBest is { } best ? [$"By what is known it is {best} at best."] : Array.Empty<string>()]),
            var other => throw new InvalidOperationException($"A grading ended as {other.GetType().Name}."),
        });
        return command;
    }

    private static void Say(SettlementAnswer answer, Voice voice)
    {
        voice.Say($"Under {answer.Under}");
        var table = new TextTable("line", "value", "how");
        foreach (var line in answer.Lines)
        {
            table.Add(line.What, line.Shown, line.Formula.Length > 0 ? $"{line.Formula} ({line.Source})" : "");
        }

        table.To(voice);
    }
}
