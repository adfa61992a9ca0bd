using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Planning.Milling;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Moves suggested for a wish.</summary>
internal static class MillSuggestVerb
{
    public static Command Of(Voice voice) => PosedVerb.Of<MillSolveCase, MillSuggestAnswer>(
        new Command("suggest", "The best small sets of moves of gaps, air, cloths and flow for a wish to a posed mill, each with its change ± and the chance to get it. Sets no machine, needs no records."), voice,
        MillSolveCase.Help, MillSolveCase.Read, posed => MillSuggestAnswer.To(posed, spec => SuggestSolver.Solve(spec)), answer => Say(answer, voice));

    private static void Say(MillSuggestAnswer answer, Voice voice)
    {
        voice.Say($"{answer.Words} {answer.Looked} single moves were allowed; {answer.Tuned}. Ash and protein on {answer.Basis}; every ± is k = 2.");
        foreach (var (n, set) in answer.Sets.Index())
        {
            voice.Say(n == 0 ? answer.Met ? "best:" : "nearest:" : $"or, {n + 1}:");
            voice.Say(set.Moves.Select(m => $"  {m.Words}"));
            var figures = new TextTable("figure", "now", "then", "change", "±", "chance %", "holds", "unit");
            foreach (var bound in set.Keep.Prepend(set.Wish).Append(set.Fullest))
            {
                figures.Add(bound.What, Number(bound.Now, 3), Number(bound.Then, 3), Signed(bound.Change, 4), Number(bound.Half, 4), Number(bound.ChancePercent, 0), bound.Holds ? "yes" : "no", bound.Unit);
            }

            figures.To(voice);
        }

        voice.Say(answer.Remarks);
    }
}
