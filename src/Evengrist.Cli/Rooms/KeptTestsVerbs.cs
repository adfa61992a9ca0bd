using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Milling.Drift;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Records.Milling;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>What the kept tests of a unit tell: the mill tuned to them, and what drifted.</summary>
internal static class KeptTestsVerbs
{
    public static Command Fit(Voice voice, IClock clock) => Of<MillFitAnswer>(
        new Command("fit", "What a unit's kept tests say of it: factors on the model ±, and every measured figure beside the model's."), voice, clock,
        (history, _) => history.Tests.Count == 0 ? new Reply<MillFitAnswer>(null, [$"No test of {history.Unit} stands: the mill is not tuned. Keep some with milling tests add."]) : MillFitAnswer.To(history.MillTests, history.Sheet, history.Tests[^1].Test.Wheat),
        answer => MillSolveVerbs.Say(answer, voice));

    public static Command Drift(Voice voice, IClock clock)
    {
        var (flour, feed) = (new Option<decimal?>("--flour") { Description = "what flour brings, money a tonne; no money where left out", HelpName = "PRICE" }, new Option<decimal?>("--feed") { Description = "what bran, wheatfeed and germ bring", HelpName = "PRICE" });
        return Of<MillDriftAnswer>(
            new Command("drift", "What drifted in a unit by its kept tests: wear, rolls moved, torn cloths, chokes, wet feed; how likely, what it costs a day, what to measure next.") { flour, feed }, voice, clock,
            (history, asked) =>
            {
                var prices = asked.GetValue(flour) is null && asked.GetValue(feed) is null ? null : new DriftPrices(asked.GetValue(flour) ?? 0, asked.GetValue(feed) ?? 0);
                return prices is not null && MillDriftAnswer.FaultOf(prices) is { } wrong ? throw new BadInput(Fault.Told("--flour", wrong)) : MillDriftAnswer.To(history.Tests, prices);
            },
            answer => MillDriftVerb.Say(answer, voice));
    }

    private static Command Of<T>(Command command, Voice voice, IClock clock, Func<MillTestHistory, ParseResult, Reply<T>> reply, Action<T> say)
        where T : class
    {
        var where = new MillOption();
        var (unit, until, json) = (new Option<string>("--unit") { Description = "code of the mill unit", HelpName = "CODE", Required = true }, MomentOption.Of("--until", "tests taken later are left out; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        command.Add(unit);
        command.Add(until);
        command.Add(json);
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var history = MillTestHistory.Of(mill, asked.GetValue(unit)!, MomentOption.Read(asked, until) ?? clock.GetCurrentInstant()) ?? throw new BadInput(Fault.Told("--unit", $"No flow sheet of a unit {asked.GetValue(unit)} is kept: keep one with milling keep."));
            foreach (var left in history.LeftOut)
            {
                voice.Tell(left);
            }

            return reply(history, asked) switch
            {
                { Answer: { } answer } => voice.Answer(asked.GetValue(json), answer, say),
                var none => voice.NoAnswer(none.Reasons),
            };
        });
        return command;
    }
}
