using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;

namespace Evengrist.Cli.Rooms;

/// <summary>Probe plans, edge doubt, test or not, and screening, each of a posed case.</summary>
internal static class SamplingVerbs
{
    public static IEnumerable<Command> Of(Voice voice) =>
    [
        Verb("probe", "Plans the sample of a posed vehicle: probes, masses, points, cautions, and how far the result may be off. Needs no records.", ProbeCase.Help, ProbeCase.Read, ProbeAnswer.To, voice, a => Say(a, voice)),
        Verb("edge", "How sure a posed reading's side of each edge is, and whether to probe again. Needs no records.", EdgeCase.Help, EdgeCase.Read, EdgeAnswer.To, voice, a => Say(a, voice)),
        Verb("test", "Whether a falling number or DON test of a posed load is worth its wait. Needs no records.", TestCase.Help, TestCase.Read, TestAnswer.To, voice, a => Say(a, voice)),
        Verb("screen", "Whether one composite of posed loads clears them all, and which to test next. Needs no records.", ScreenCase.Help, ScreenCase.Read, ScreenAnswer.To, voice, a => Say(a, voice)),
    ];

    private static Command Verb<TCase, TAnswer>(
        string name, string says, CaseHelp help, Func<Stream, Parsed<TCase>> read, Func<TCase, (TAnswer? Answer, IReadOnlyList<string> Reasons)> to, Voice voice, Action<TAnswer> say)
        where TCase : class
        where TAnswer : class
    {
        var command = new Command(name, says);
        var posed = new PosedVerb();
        posed.AddTo(command, help);
        command.SetAction(asked =>
        {
            var (answer, reasons) = to(posed.Ask(asked, read, Parsing.Got));
            return answer is null ? voice.NoAnswer(reasons) : voice.Answer(posed.Json(asked), answer, say);
        });
        return command;
    }

    private static void Say(ProbeAnswer answer, Voice voice)
    {
        voice.Say($"{answer.Why}. The rule is {answer.Mark}.");
        voice.Say($"each at least {answer.IncrementG?.ToString(CultureInfo.InvariantCulture) ?? "(not known)"} g, together at least {answer.CompositeG?.ToString(CultureInfo.InvariantCulture) ?? "(not known)"} g");
        var table = new TextTable("probe", "from the front m", "from the left m");
        foreach (var point in answer.Points)
        {
            table.Add(N(point.Number), N(point.AlongM), N(point.AcrossM));
        }

        if (answer.Points.Count > 0)
        {
            table.To(voice);
        }

        voice.Say($"{answer.WherePointsStand}{(answer.CutsAt.Count > 0 ? ": " + string.Join(", ", answer.CutsAt.Select(c => $"{100 * c:0} %")) : "")}");
        if (answer.Spread is { } spread)
        {
            voice.Say($"result ± {N(spread.PlusMinus)} (k = 2){(spread.ProbesWanted is { } n ? $"; the half-width wants {n} probes" : "")}");
        }

        foreach (var line in answer.Notes.Concat(answer.Cautions))
        {
            voice.Say("- " + line);
        }
    }

    private static void Say(EdgeAnswer answer, Voice voice)
    {
        var table = new TextTable("edge", "at least % sure", "right side % sure", "settled", "further probes", "below", "at or above");
        foreach (var edge in answer.Edges)
        {
            table.Add(N(edge.Edge), P(edge.ChanceAtLeast), P(edge.ChanceRightSide), edge.Settled ? "yes" : "no", edge.MoreProbes?.ToString(CultureInfo.InvariantCulture) ?? "none would", edge.Below, edge.Above);
        }

        table.To(voice);
        voice.Say(answer.Advice);
        voice.Say($"Reckoned: {answer.Assumed}.");
    }

    private static void Say(TestAnswer answer, Voice voice)
    {
        voice.Say(answer.Advice);
        var table = new TextTable("what", "figure");
        table.Add("chance beyond the limit %", P(answer.ChanceBeyondLimit));
        table.Add("expected loss untested", N(answer.LossUntested));
        table.Add("expected loss tested", N(answer.LossTested));
        table.Add("value of the test", N(answer.Value));
        table.Add("value of knowing for certain", N(answer.ValueOfKnowing));
        table.Add("queue", N(answer.QueueCost));
        table.Add("test", N(answer.OwnCost));
        table.Add("net", N(answer.Net));
        table.Add("decide at", answer.DecideAt is { } level ? N(level) : "no level");
        table.Add("turns at trucks waiting", answer.TurnsAtTrucks is { } turns ? N(turns) : "never");
        table.To(voice);
        if (answer.Acceptance is { } risks)
        {
            voice.Say($"accepting at {N(risks.AcceptAt)}: buyer's risk at the limit {P(risks.BuyersRiskAtLimit)} %, seller's at half of it {P(risks.SellersRiskAtHalfLimit)} %; guarded level {(risks.GuardedLevel is { } g ? N(g) : "none above 0")}");
        }

        voice.Say($"Prior {answer.Prior}: mean {N(answer.PriorMean)}, standard deviation {N(answer.PriorSd)}. Taken for granted: {string.Join(" ", answer.Assumed)}");
    }

    private static void Say(ScreenAnswer answer, Voice voice)
    {
        voice.Say($"The composite {answer.Verdict}; the proof limit is {answer.ProofLimit.ToString("0.####", CultureInfo.InvariantCulture)} mg/kg.");
        foreach (var next in answer.TestNext)
        {
            voice.Say($"test {next.Code}: it could hold {next.CouldHold.ToString("0.###", CultureInfo.InvariantCulture)} mg/kg");
        }

        voice.Say(answer.Over.Count > 0 ? $"over the limit: {string.Join(", ", answer.Over)}" : "");
        if (answer.ExpectedTests is { } tests)
        {
            voice.Say($"tests to expect {N(tests)} against {answer.TestsOneByOne} one by one");
        }

        voice.Say($"Reckoned: {answer.Assumed}.");
    }

    private static string N(double number) => number.ToString("0.####", CultureInfo.InvariantCulture);

    private static string P(double chance) => (100 * chance).ToString("0.0", CultureInfo.InvariantCulture);
}
