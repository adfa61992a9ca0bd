using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Packing.Rework;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Rework beside a run.</summary>
internal static class ReworkVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var (posed, where) = (new PosedVerb(), new MillOption());
        var into = new Option<string?>("--into") { Description = "flour of the run, of the mill's records; not with --in", HelpName = "FLOUR" };
        var rate = new Option<double?>("--rate") { Description = "its flow, t/h; as the ledger had it in the last 24 hours when left out" };
        var asof = MomentOption.Of("--asof", "as of a moment; now when left out");
        var command = new Command("rework", "Which tote to feed into a run, how much of it and how long that lasts, and why another is passed over: of a posed case, or of the mill's totes. Feeds nothing.") { into, rate, asof };
        posed.AddTo(command, ReworkCase.Help);
        where.AddTo(command);
        command.SetAction(asked =>
        {
            if (posed.IsPosed(asked))
            {
                return voice.Answer(posed.Json(asked), posed.Ask(asked, ReworkCase.Read, c => Parsing.Got(ReworkAdviceAnswer.Of(c.Totes, c.Run, c.Rules))), answer => Say(answer, voice));
            }

            if (asked.GetValue(into) is not { Length: > 0 } flour)
            {
                return voice.Refuse([Fault.Told("--into", "Say into which flour, or pose a case with --in.")]);
            }

            if (asked.GetValue(rate) is { } typed and not (> 0 and <= 1000))
            {
                return voice.Refuse([Fault.Told("--rate", FormattableString.Invariant($"A flow lies above 0 to 1000 t/h; got {typed}."))]);
            }

            using var mill = where.Open(asked, clock);
            var at = MomentOption.Read(asked, asof) ?? clock.GetCurrentInstant();
            var run = ReworkLedger.Run(mill, flour, at);
            return voice.Answer(posed.Json(asked), ReworkAdviceAnswer.Of(ReworkLedger.Of(mill, at).Select(t => t.Tote), run with { TonnesPerHour = asked.GetValue(rate) ?? run.TonnesPerHour }, KeepReworkRules.Newest(mill).Rules), answer => Say(answer, voice));
        });
        return command;
    }

    private static void Say(ReworkAdviceAnswer answer, Voice voice)
    {
        voice.Say(answer.Totes.Count == 0 ? $"No tote holds anything for {answer.Into}." : $"into {answer.Into}{(answer.TonnesPerHour is { } flow ? FormattableString.Invariant($", {flow:0.###} t/h") : "")}, the oldest first:");
        var table = new TextTable("tote", "flour", "kg", "days", "most %", "kg/h", "lasts h", "");
        foreach (var tote in answer.Totes)
        {
            table.Add(tote.Code, tote.Flour, Number(tote.Grams / 1000.0, 0), Number(tote.AgeDays, 1), Number(tote.MostPercent, 2), Number(tote.GramsPerHour / 1000, 1), Number(tote.Hours, 2), tote.IsNext ? "feed this next" : "");
        }

        table.To(voice);
        voice.Say([.. answer.Totes.SelectMany(t => t.Findings.Select(f => f.Words).Concat(t.Values.Select(v => FormattableString.Invariant($"{t.Code}: {v.What} comes to {v.Value:0.00} with {t.MostPercent:0.##} % of it."))))]);
        voice.Say(answer.Note);
    }
}
