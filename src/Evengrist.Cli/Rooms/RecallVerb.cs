using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Plant.Imports;
using Evengrist.Plant.Recalls;
using Evengrist.Quantities;
using Evengrist.Records.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>What to call back.</summary>
internal static class RecallVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var what = new Argument<string[]>("WHAT") { Description = "what is suspect in the records, each in quotes: a code, with hours behind it where only those are (\"B14 2025-09-17T20:00Z 2025-09-18T02:00Z\"), \"instrument NAME FROM UNTIL\", or \"packaging LOT\" of bags, film, labels or cases", Arity = ArgumentArity.ZeroOrMore };
        var (asOf, threshold, chance) = (MomentOption.Of("--as-of", "the moment looked back from; the newest when left out, and in the demonstration the moment it opens at"),
            new Option<decimal>("--threshold") { Description = "kg; 50 when left out", HelpName = "KG", DefaultValueFactory = _ => 50m }, new Option<decimal>("--chance") { Description = "of the narrow net, per cent; 50 when left out", HelpName = "PERCENT", DefaultValueFactory = _ => 50m });
        var net = new Option<NetKind>("--net") { Description = "whose packages are listed", DefaultValueFactory = _ => NetKind.Union };
        var unknown = new Option<bool>("--any-order") { Description = "in the bounds temper bins and lines leave in any order too" };
        var (posed, where) = (new PosedVerb(), new MillOption());
        var command = new Command("recall", "What to call back: wide and narrow net with what each takes and may miss, and what is still unknown.") { what, asOf, threshold, chance, net, unknown };
        posed.AddTo(command, RecallCase.Help);
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var named = asked.GetValue(what) ?? [];
            if (posed.IsPosed(asked) == named.Length > 0)
            {
                throw new BadInput(new Fault(null, null, "WHAT", "", "either what is suspect in the records, or --in with a posed case"));
            }

            if (asked.GetValue(threshold) is < 0m or > 100_000m || asked.GetValue(chance) is < 0m or > 100m)
            {
                throw new BadInput(new Fault(null, null, "--threshold, --chance", "", "kilograms from 0 to 100 000, per cent from 0 to 100"));
            }

            RecallAnswer answer;
            if (posed.IsPosed(asked))
            {
                answer = posed.Ask(asked, RecallCase.Read, RecallAnswer.Of);
            }
            else
            {
                var moment = MomentOption.Read(asked, asOf);
                using var mill = where.Open(asked, clock);
                var at = MomentOption.LookedAt(moment, mill, clock);
                var (lines, unread) = RecallLines.Read(string.Join('\n', named), text => Moments.Of(text, null).At, at.InZone(mill.Settings.Zone).Year);
                var starts = RecallStarts.Of(mill, lines, at);
                if (unread.Concat(starts.Faults).ToArray() is { Length: > 0 } faults)
                {
                    throw new BadInput([.. faults.Select(f => new Fault(null, null, "WHAT", "", f))]);
                }

                var question = new RecallQuestion(starts.Starts) { AsOf = at, Threshold = Mass.FromKilograms(asked.GetValue(threshold)), Chance = (double)asked.GetValue(chance) / 100, Bounds = new BoundsOptions { ThroughIsUnknown = asked.GetValue(unknown) } };
                answer = mill.Ask(view => RecallAnswer.Of(RecallGaps.With(mill, view.Tracer().Recall(question, null, Parallel.Invoke)), asked.GetValue(net)) with { TakenFor = [.. starts.Words, question.Bounds.Words] });
            }

            return answer.Nothing is { } nothing ? voice.NoAnswer([nothing]) : voice.Answer(posed.Json(asked), answer, a => Say(a, voice));
        });
        return command;
    }

    private static void Say(RecallAnswer answer, Voice voice)
    {
        voice.Say($"Recall of {string.Join(", ", answer.Suspect.Take(10))}{(answer.Suspect.Count > 10 ? $" and {answer.Suspect.Count - 10} more" : "")}, {Amounts.Kilograms(answer.TracedKilograms.Expected)} kg, as of {answer.AsOf}.");
        foreach (var word in answer.TakenFor)
        {
            voice.Say(word);
        }

        var nets = new TextTable("net", "packages", "whole kg", "in stock kg", "shipped kg", "customers", "outside kg", "missing %", "can be missed");
        foreach (var net in answer.Nets)
        {
            nets.Add([net.Net, $"{net.Packages}", $"{net.WholeKg:0.###}", $"{net.StockKg:0.###}", $"{net.ShippedKg:0.###}", $"{net.Consignees.Count}", Amounts.Kilograms(net.ExpectedOutsideKg), Amounts.Share(net.ChanceOfMissing), $"{net.CanBeMissedUnderSomeOutflow}"]);
        }

        nets.To(voice);
        voice.Say("Missing: belief in the hypotheses under which a package outside holds more than the threshold; what no hypothesis describes is in the last column alone.");
        var table = new TextTable("package", "product", "made", "least kg", "expected kg", "most kg", "any outflow, least", "most", "chance above %", "sent to", "hold");
        foreach (var p in answer.Packages.Take(400))
        {
            table.Add([p.Code, p.Product, p.Made, .. Amounts.Spread(p.Kilograms, Amounts.Kilograms), Amounts.Kilograms(p.AnyOutflowKilograms.Least), Amounts.Kilograms(p.AnyOutflowKilograms.Most), Amounts.Share(p.ChanceOverThreshold), p.SentTo ?? "", p.OnHold ? "held" : ""]);
        }

        table.To(voice);
        if (answer.Packages.Count > 400)
        {
            voice.Say($"and {answer.Packages.Count - 400} more: --json lists all");
        }

        foreach (var gap in answer.Unknown.GroupBy(u => u.Kind))
        {
            voice.Say($"still unknown, {gap.Key}: {string.Join(", ", gap.Take(12).Select(u => (u.Place ?? "the ledger") + (u.From is null ? "" : $" {u.From}{(u.Until is null ? "" : $" to {u.Until}")}") + (u.Kilograms is { } kg ? $" ({Amounts.Kilograms(kg)} kg)" : "")))}{(gap.Count() > 12 ? $" and {gap.Count() - 12} more" : "")}");
        }

        voice.Say("Reckoned. A negative test does not clear a lot; a named person decides.");
    }
}
