using System.Globalization;
using Evengrist.Plant.Answers;

namespace Evengrist.Cli.Said;

/// <summary>A grade in words and as a table.</summary>
internal static class GradeWords
{
    public static void Say(GradeAnswer answer, Voice voice)
    {
        voice.Say(answer.Designation);
        voice.Say($"by {answer.Standard}, edition {answer.Edition}. Deciding: {(answer.Deciding.Count > 0 ? string.Join(", ", answer.Deciding) : "nothing, every factor meets the best grade")}.");
        var table = new TextTable("factor", "unit", "found", "recorded", "alone", "to better", "room to worse");
        foreach (var factor in answer.Factors)
        {
            table.Add(factor.Factor, factor.Unit, Number(factor.Found), Number(factor.Recorded) + (factor.State == "assumed" ? " (assumed)" : ""), factor.GradeAlone + (factor.Decides ? " *" : ""), Step(factor.Better), Step(factor.Worse));
        }

        table.To(voice);
        foreach (var (words, list) in new[]
        {
            ("Class", answer.ClassBecause), ("Special grades", answer.SpecialGrades.Select(s => $"{s.Name} ({s.Because})").ToArray()), ("Taken as none, not looked for", answer.AssumedNone),
            ("Not looked for, and may still be", answer.NotLookedFor), ("Limits from memory, not verified", answer.LimitsFromMemory), ("Not read here", answer.NotRead), ("Beside the grade", answer.Beside),
        })
        {
            if (list.Count > 0)
            {
                voice.Say($"{words}: {string.Join("; ", list)}");
            }
        }
    }

    private static string Number(decimal? value) => value is { } number ? Math.Round(number, 4).ToString("0.####", CultureInfo.InvariantCulture) : "missing";

    private static string Step(StepAnswer? step) => step is null ? "" : $"{Number(step.By)} to {step.Grade}";
}
