using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>What drifted in a mill.</summary>
internal static class MillDriftVerb
{
    public static Command Of(Voice voice) => PosedVerb.Of<MillSolveCase, MillDriftAnswer>(
        new Command("drift", "What drifted in a posed mill by its dated tests: wear, rolls moved, torn cloths, chokes, wet feed; how likely, what it costs a day, what to measure next. Needs no records."), voice,
        MillSolveCase.Help, MillSolveCase.Read, MillDriftAnswer.To, answer => Say(answer, voice));

    internal static void Say(MillDriftAnswer answer, Voice voice)
    {
        voice.Say(answer.Found.Count == 0 ? "Nothing drifted that these tests show. Every ± is k = 2." : "What drifted, what costs most first. Every ± is k = 2.");
        foreach (var found in answer.Found)
        {
            voice.Say($"{found.What}, since {found.Since}: {found.Amount}; {Number(100 * found.Probability, 0)} in 100 likely");
            voice.Say($"  flour at the same ash {Signed(found.FlourPoints.Value, 2)} ± {Number(found.FlourPoints.Half, 2)} points" + (found.CostPerDay is { } cost ? $"; costs {Number(cost.Value, 0)} ± {Number(cost.Half, 0)} in 24 h" : ""));
            voice.Say(found.Evidence.Select(e => $"  {e.What}: measured {Number(e.Measured, 3)}, without it {Number(e.Without, 3)}, with it {Number(e.With, 3)}, own scatter {Number(e.OwnSpread, 3)}"));
            voice.Say([.. found.Else.Select(e => $"  or {e}"), .. found.Next is { } next ? [$"  to be sure, measure {next}"] : Array.Empty<string>(), $"  {found.ToLookAt}"]);
        }

        var outside = answer.Series.Where(s => s.Points[^1].IsOutside).ToArray();
        if (outside.Length > 0)
        {
            voice.Say("outside their own bands (three times their scatter) at the newest test: " + string.Join(", ", outside.Select(s => s.What)));
        }

        voice.Say(answer.Remarks);
    }
}
