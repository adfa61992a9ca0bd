using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Cases;
using Evengrist.Records.Laboratory;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Samples of the laboratory, and results an instrument exported.</summary>
internal static class LabBenchVerbs
{
    private const int Days = 7;

    public static Command Samples(Voice voice, IClock clock)
    {
        var (where, asOf, json) = (new MillOption(), MomentOption.Of("--asof", "the moment looked at; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("samples", $"Samples due by the plan, taken and tested, of the last {Days} days.") { asOf, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var (at, zone, plan) = (MomentOption.Read(asked, asOf) ?? clock.GetCurrentInstant(), mill.Settings.Zone, KeepLabPlan.Newest(mill).Plan);
            string Say(Instant moment) => moment.InZone(zone).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture);
            SampleLine[] lines = mill.Ask(view => PlannedSample.Of(plan, view.Book, at).Select(p => new SampleLine(p.IsDue(at) ? "due" : "planned", "", p.Place.Code, Say(p.Due), [.. p.Line.Tests.Select(t => t.Words)]))
                .Concat(TakenSample.Within(view.Book, at - Duration.FromDays(Days), at).Select(s => new SampleLine(s.IsTested ? "tested" : "taken", s.Sample.Code, s.Place.Code, Say(s.At), [.. s.Waiting.Select(t => t.Words)]))).ToArray());
            return voice.Answer(asked.GetValue(json), lines, all =>
            {
                var table = new TextTable("state", "sample", "place", "when", "to do");
                foreach (var line in all)
                {
                    table.Add(line.State, line.Sample, line.Place, line.When, string.Join(", ", line.ToDo));
                }

                table.To(voice);
            });
        });
        return command;
    }

    public static Command Import(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Argument<string>("FILE") { Description = $"CSV or XLSX, one row for each value, with the headings {string.Join(", ", LabResultColumns.All.Where(c => c.IsNeeded).Select(c => c.Name))}; and {string.Join(", ", LabResultColumns.All.Where(c => !c.IsNeeded).Select(c => c.Name))}" };
        var (by, reason) = (new Option<string?>("--by") { Description = "who records them", HelpName = "NAME" }, new Option<string>("--reason") { Description = "why what is asked about is taken", HelpName = "WORDS", DefaultValueFactory = _ => "" });
        var dry = new Option<bool>("--dry-run") { Description = "says what would be, and records nothing" };
        var command = new Command("import", "Results an instrument exported, for samples recorded as taken: all of them or none. The same file twice adds nothing.") { file, by, reason, dry };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var name = asked.GetValue(by) ?? (asked.GetValue(dry) ? "dry run" : throw new BadInput(Fault.Told("--by", "Say who records them.")));
            using var stream = Files.Open(asked.GetRequiredValue(file));
            var read = LabResultTable.Read(stream, mill.Settings.Zone);
            if (!read.Ok)
            {
                return voice.Refuse(read.Faults);
            }

            var rows = new ImportResults(read.Value.Rows, asked.GetValue(reason)!);
            var objections = rows.Objections(mill);
            Fault[] against = [.. objections.Where(o => !o.Objection.IsQuestion || rows.Reason.Trim().Length == 0).Select(o => Fault.ToldOfLine(o.Line, o.Objection.Words + (o.Objection.IsQuestion ? " If it is right, say why with --reason." : "")))];
            if (against.Length > 0)
            {
                return voice.Refuse(against);
            }

            if (asked.GetValue(dry))
            {
                voice.Say($"{rows.Rows.Count} values could be recorded; none was.");
                return Exit.Done;
            }

            try
            {
                var receipt = rows.In(mill, name).Receipt!;
                voice.Say($"{rows.Rows.Count} values: {receipt.Added} recorded, {receipt.AlreadyKnown} known already.");
                return Exit.Done;
            }
            catch (LedgerRefusal refusal)
            {
                return voice.Refuse([Fault.Told(asked.GetRequiredValue(file), refusal.Message)]);
            }
        });
        return command;
    }

    private sealed record SampleLine(string State, string Sample, string Place, string When, string[] ToDo);
}
