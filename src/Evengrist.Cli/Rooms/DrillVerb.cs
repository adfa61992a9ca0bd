using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Quantities;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Drill;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>A recall drill, run and scored.</summary>
internal static class DrillVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var code = new Argument<string?>("CODE") { Description = "a truck, pallet or load; or give --seed", Arity = ArgumentArity.ZeroOrOne };
        var seed = new Option<int?>("--seed") { Description = "picks a truck or pallet of the last year, the same for the same seed" };
        var threshold = new Option<decimal>("--threshold") { Description = "kg; 0 when left out", HelpName = "KG" };
        var net = new Option<NetKind>("--net") { Description = "the net that is the list", DefaultValueFactory = _ => NetKind.Union };
        var by = new Option<string?>("--by") { Description = "who runs it: the drill is then kept, with its clock; left out, nothing is kept", HelpName = "NAME" };
        var (asOf, json, where) = (MomentOption.Of("--as-of", "the moment looked back from"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" }, new MillOption());
        var command = new Command("drill", "Practise a recall: list and recount, scored.") { code, seed, threshold, net, by, asOf, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            if (asked.GetValue(code) is null == asked.GetValue(seed) is null)
            {
                throw new BadInput(new Fault(null, null, "CODE", "", "either a code or --seed"));
            }

            if (asked.GetValue(threshold) is < 0m or > 100_000m)
            {
                throw new BadInput(new Fault(null, null, "--threshold", "", "kilograms from 0 to 100 000"));
            }

            var moment = MomentOption.Read(asked, asOf);
            using var mill = where.Open(asked, clock);
            var at = MomentOption.LookedAt(moment, mill, clock);
            var mass = Mass.FromKilograms(asked.GetValue(threshold));
            var (subject, reason) = Drills.Subject(mill, asked.GetValue(code), asked.GetValue(seed), at);
            if (subject is null)
            {
                throw new BadInput(new Fault(null, null, "CODE", Fault.Show(asked.GetValue(code) ?? ""), reason!));
            }

            if (asked.GetValue(by) is { } name)
            {
                var started = Drills.Start(mill, asked.GetValue(code), asked.GetValue(seed), mass, asked.GetValue(net), at, name, clock.GetCurrentInstant());
                return Say(voice, asked.GetValue(json), subject.Code, Drills.Close(mill, started.Number, name, clock.GetCurrentInstant(), "").Score!);
            }

            var (score, nothing) = Drills.Score(mill, subject.Code, mass, asked.GetValue(net), at);
            return score is null ? voice.NoAnswer([nothing!]) : Say(voice, asked.GetValue(json), subject.Code, score);
        });
        return command;
    }

    private static int Say(Voice voice, bool json, string subject, DrillScore score) => voice.Answer(json, new { subject, score }, _ =>
    {
        voice.Say(FormattableString.Invariant($"Drill about {subject}: back {score.SecondsBack:0.00} s, forward {score.SecondsForward:0.00} s."));
        voice.Say(FormattableString.Invariant($"List {score.Listed} packages, {score.ListedKilograms:0} kg, {score.Consignees} customers; recount {score.Recounted} packages: {100 * score.Completeness:0.0} % complete, {100 * score.Precision:0.0} % of the kilograms precise."));
        if (score.Missed.Count > 0)
        {
            voice.Say($"Not in the list: {string.Join(", ", score.Missed)}");
        }

        voice.Say(FormattableString.Invariant($"Accounted for {score.AccountedForPercent:0.00} %. The recount is other code over the same ledger and hypotheses."));
    });
}
