using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Planning.Mix;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Today's mix.</summary>
internal static class MixRoom
{
    public static Command Of(Voice voice, IClock clock) => new("mix", "Today's mix from the gates of the bins, its sheets, and how flours follow from their wheat.") { Solve(voice), SheetVerbs.Sheets(voice, clock), SheetVerbs.Set(voice, clock), RelationVerbs.Of(voice, clock) };

    private static Command Solve(Voice voice)
    {
        var command = new Command("solve", "The cheapest mix of posed bins that keeps every limit, in steps of the gates; what limits cost; or which clash. Needs no records.");
        return PosedVerb.Of<MixCase, MixAnswer>(command, voice, MixCase.Help, MixCase.Read, posed => MixAnswer.Of(MixSolver.Solve(posed.Spec), posed.Spec.Currency), Say);

        void Say(MixAnswer answer)
        {
            var gates = new TextTable("bin", "class", "share %", "t/h", "cost", "old habit %");
            foreach (var bin in answer.Gates.Select(g => g.Bin).Union((answer.Habit?.Gates ?? []).Select(g => g.Bin)))
            {
                var (gate, habit) = (answer.Gates.FirstOrDefault(g => g.Bin == bin), answer.Habit?.Gates.FirstOrDefault(g => g.Bin == bin));
                gates.Add(bin, (gate ?? habit)!.Class, N(gate?.SharePercent, 2), N(gate?.TonnesPerHour, 2), N((gate ?? habit)!.CostPerTonne, 2), N(habit?.SharePercent, 2));
            }

            gates.To(voice);
            voice.Say($"cost {N(answer.CostToday, 2)} {answer.Currency}/t today, {N(answer.CostOfTheYear, 2)} of the year; kept least: {answer.CostKeptLeast}{(answer.Habit is { } old ? $"; old habit {N(old.CostToday, 2)} today, {N(old.CostOfTheYear, 2)} of the year" : "")}");
            var values = new TextTable("of", "expected", "value", "±", "unit");
            foreach (var (of, value) in answer.Wheat.Select(w => ("wheat", w)).Concat(answer.Flour.Select(f => ("flour", f))))
            {
                values.Add(of, value.What, N(value.Value, 3), N(2 * value.StandardUncertainty, 3), $"{value.Unit} {value.Basis}".Trim());
            }

            values.To(voice);
            var limits = new TextTable("limit", "headroom", "chance %", "a step would save");
            foreach (var limit in answer.Limits)
            {
                var saving = answer.Savings.FirstOrDefault(s => s.What == limit.Limit);
                limits.Add(limit.Limit, N(limit.Spare, 3), N(limit.ChancePercent, 1), saving is null ? "" : $"{saving.Bound} {N(saving.PerTonne, 3)} {answer.Currency}/t (to {saving.To})".Trim());
            }

            limits.To(voice);
            foreach (var line in answer.LeftOut.Select(l => l.Reason).Concat(answer.Remarks))
            {
                voice.Say(line);
            }

            voice.Say(answer.Note);
        }
    }

    private static string N(double? number, int decimals) => number?.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture) ?? "";
}
