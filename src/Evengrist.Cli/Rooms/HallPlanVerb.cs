using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Packing.Boards;
using Evengrist.Plant.Answers;
using Evengrist.Records.Packing;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>The order of packing runs from the mill's records.</summary>
internal sealed class HallPlanVerb(Voice voice, IClock clock)
{
    private readonly MillOption where = new();
    private readonly Option<string?> asOf = MomentOption.Of("--as-of", "from the records: when the plan begins; now when left out");
    private readonly Option<double> seconds = new("--seconds") { Description = "from the records: longest search, 0.5 to 60", HelpName = "S", DefaultValueFactory = _ => 4 };
    private readonly Option<string?> keep = new("--keep") { Description = "from the records: keep the plan, and why", HelpName = "WHY" };
    private readonly Option<string?> by = new("--by") { Description = "who keeps it", HelpName = "NAME" };

    public void AddTo(Command command)
    {
        where.AddTo(command);
        foreach (var option in new Option[] { asOf, seconds, keep, by })
        {
            command.Add(option);
        }
    }

    public int Answer(ParseResult asked, bool json)
    {
        var at = MomentOption.Read(asked, asOf);
        using var mill = where.Open(asked, clock);
        var moment = at ?? mill.Settings.OpeningOr(clock.GetCurrentInstant());
        var (posed, outcome, plan) = new PlanRuns(moment) { Longest = TimeSpan.FromSeconds(Math.Clamp(asked.GetValue(seconds), 0.5, 60)) }.In(mill);
        if (plan is null)
        {
            return voice.NoAnswer(PackingPlanAnswer.Of(outcome, posed.Spec).Reasons.Concat(posed.LeftOut.Select(l => $"{l.Order} has no run: {l.Why}")));
        }

        if (asked.GetValue(keep) is { } why && PackingPlans.Keep(mill, plan, why, asked.GetValue(by)) is { Kept: null, Faults: var faults })
        {
            return voice.NoAnswer(faults);
        }

        var zone = mill.Settings.Zone;
        return voice.Answer(json, HallPlanAnswer.Of(plan), _ => Say(plan, zone));
    }

    private void Say(PackingPlan answer, DateTimeZone zone)
    {
        string Clock(Instant moment) => moment.InZone(zone).LocalDateTime.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);
        var runs = new TextTable("line", "order", "product", "t", "change over min", "start", "end", "due", "late min", "");
        foreach (var run in answer.Runs)
        {
            runs.Add(run.Line, run.Order, run.Product, Number(run.Grams / 1e6, 1), Number(run.ChangeMinutes, 0), Clock(run.From), Clock(run.Until), Clock(run.Due), Number(run.LateMinutes, 0), run.IsLocked ? "stays" : "");
        }

        runs.To(voice);
        var beside = new TextTable("order", "cost", "hours", "late min", "late runs", "changing over min", "run through t", "does not keep");
        foreach (var (name, plan) in new[] { ("this plan", answer.Figures), ("as taken", answer.FirstCome), ("by due time", answer.EarliestDue) })
        {
            beside.Add(name, Number(plan.Cost, 2), Number(plan.Hours, 1), Number(plan.LateMinutes, 0), Number(plan.LateRuns, 0), Number(plan.ChangeMinutes, 0), Number(plan.FlushTonnes, 2), string.Join(" ", plan.Breaks));
        }

        beside.To(voice);
        voice.Say($"{answer.Said} Gap {Number(answer.GapPercent, 2)} %, {Number(answer.SolverSeconds, 2)} s.");
        voice.Say(answer.Runs.Where(r => r.ToSign.Count > 0).Select(r => $"To sign: before {r.Order} on {r.Line}, {Clock(r.From)}: clean-down for {string.Join(", ", r.ToSign)}."));
        voice.Say(answer.Full.Select(f => $"Bin {f.Bin} is full at {Clock(f.At)}: the mill would choke."));
        voice.Say(answer.LeftOut.Select(l => $"{l.Order} has no run: {l.Why}"));
        voice.Say(PackingPlanAnswer.Said);
    }
}
