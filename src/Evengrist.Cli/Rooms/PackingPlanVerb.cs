using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Planning.Packing;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>The order of packing runs.</summary>
internal static class PackingPlanVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var command = new Command("plan", "The order and times of packing runs over lines that cost least in lateness, changing over and flour run through, proven or with its gap; or what clashes. Of the mill's open orders from its records, or of posed runs with --in. Starts no line.");
        var (posed, records) = (new PosedVerb(), new HallPlanVerb(voice, clock));
        posed.AddTo(command, PackingPlanCase.Help);
        records.AddTo(command);
        command.SetAction(asked => !posed.IsPosed(asked) ? records.Answer(asked, posed.Json(asked))
            : posed.Ask(asked, PackingPlanCase.Read, spec => Parsing.Got(PackingPlanAnswer.Of(RunOrderSolver.Solve(spec), spec))) switch
            {
                { Answer: { } answer } => voice.Answer(posed.Json(asked), answer, found => Say(found, voice)),
                var none => voice.NoAnswer(none.Reasons),
            });
        return command;
    }

    private static void Say(PackingPlanAnswer answer, Voice voice)
    {
        var runs = new TextTable("line", "run", "flour", "change over", "start h:mm", "end h:mm", "due h:mm", "late min", "");
        foreach (var run in answer.Plan.Runs)
        {
            runs.Add(run.Line, run.Run, run.Flour, Number(run.ChangeMinutes, 0), Clock(run.Start), Clock(run.End), Clock(run.Due), Number(run.LateMinutes, 0), run.IsLocked ? "stays" : "");
        }

        runs.To(voice);
        var beside = new TextTable("order", "cost", "end h:mm", "late min", "changing over min", "run through t", "does not keep");
        foreach (var (name, plan) in new[] { ("this plan", answer.Plan), ("as asked for", answer.FirstCome), ("by due time", answer.EarliestDue) })
        {
            beside.Add(name, Number(plan.Cost, 2), Clock(plan.End), Number(plan.LateMinutes, 0), Number(plan.ChangeMinutes, 0), Number(plan.FlushTonnes, 2), string.Join(" ", plan.Breaks));
        }

        beside.To(voice);
        voice.Say($"{answer.Exit} Gap {Number(answer.GapPercent, 2)} %, {Number(answer.SolverSeconds, 2)} s.");
        voice.Say(answer.ToSign.Select(s => $"To sign: {s}"));
        voice.Say(answer.Flushed.Select(f => $"Run through: {Number(f.Tonnes, 3)} t to {f.To}"));
        voice.Say(answer.Choked);
        voice.Say(answer.Note);
    }

    private static string Clock(int minutes) => $"{minutes / 60}:{minutes % 60:00}";
}
