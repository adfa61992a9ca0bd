using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Records.Milling;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Mill tests that a mill keeps: what is kept, keeping those of a file, striking one.</summary>
internal static class MillTestVerbs
{
    public static Command Of(Voice voice, IClock clock) => new("tests", "Mill tests kept with the mill: release tests, sieve analyses and surveys, dated, each with the wheat and settings of then.") { Show(voice, clock), Add(voice, clock), Strike(voice, clock), KeptTestsVerbs.Fit(voice, clock), KeptTestsVerbs.Drift(voice, clock) };

    private static Command Show(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (unit, json) = (new Option<string?>("--unit") { Description = "one unit alone", HelpName = "CODE" }, new Option<bool>("--json") { Description = "answer in JSON, figures with it, and nothing else on standard output" });
        var command = new Command("list", "The mill tests kept, by unit and time.") { unit, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var (of, zone) = (asked.GetValue(unit), mill.Settings.Zone);
            KeptMillTest[] kept = [.. MillTests.Newest(mill).Where(t => of is null || t.Paper.Unit.Equals(of, StringComparison.OrdinalIgnoreCase))];
            return voice.Answer(asked.GetValue(json), new MillTestsAnswer([.. kept.Select(t => KeptMillTestAnswer.Of(t.Code, t.Version, t.By, t.Recorded, t.Paper))]), _ => Say(kept, zone, voice));
        });
        return command;
    }

    private static Command Add(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string>("--in") { Description = $"CSV or XLSX, one row for each figure, with the headings {string.Join(", ", MillTestColumns.All.Where(c => c.IsNeeded).Select(c => c.Name))}; and {string.Join(", ", MillTestColumns.All.Where(c => !c.IsNeeded).Select(c => c.Name))}; or - for standard input", HelpName = "FILE", Required = true };
        var (unit, by) = (new Option<string>("--unit") { Description = "code of the mill unit", HelpName = "CODE", Required = true }, new Option<string>("--by") { Description = "who keeps them", HelpName = "NAME", Required = true });
        var dry = new Option<bool>("--dry-run") { Description = "says what it would keep, and keeps nothing" };
        var command = new Command("add", "Keeps the mill tests of a file, all or none.") { file, unit, by, dry };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var (name, code) = (asked.GetValue(file)!, asked.GetValue(unit)!);
            if (FlowSheets.Newest(mill, code) is not { } sheet)
            {
                throw new BadInput(Fault.Told("--unit", $"No flow sheet of a unit {code} is kept: keep one with milling keep."));
            }

            using var stream = name == "-" ? Console.OpenStandardInput() : Files.Open(name);
            var read = MillTestTable.Read(stream, code, sheet.Version, mill.Settings.Zone);
            if (!read.Ok)
            {
                return voice.Refuse(read.Faults);
            }

            (string, Evengrist.Milling.Learning.MillTestPaper Paper)[] papers = [.. read.Value.Tests.Select(t => ($"From line {t.Line}: ", t.Paper))];
            var (kept, faults) = asked.GetValue(dry) ? ([], [.. papers.SelectMany(p => MillTests.Faults(mill, p.Paper, asked.GetValue(by)!, 0, clock.GetCurrentInstant()).Select(f => p.Item1 + f))]) : MillTests.KeepAll(mill, papers, asked.GetValue(by)!, clock.GetCurrentInstant());
            if (faults.Count > 0)
            {
                return voice.Refuse(faults.Select(f => Fault.Told(name, f)));
            }

            voice.Say(asked.GetValue(dry) ? $"{papers.Length} tests could be kept; nothing was." : $"{kept.Count} tests of {code} stand: {string.Join(", ", kept.Select(k => k.Code))}");
            return Exit.Done;
        });
        return command;
    }

    private static Command Strike(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (code, reason, by) = (new Option<string>("--code") { Description = "what the test is called, as UA-2025-09-22T0900", HelpName = "CODE", Required = true }, new Option<string>("--reason") { Description = "why it shall count no longer", HelpName = "WORDS", Required = true }, new Option<string>("--by") { Description = "who strikes it", HelpName = "NAME", Required = true });
        var command = new Command("strike", "Strikes a mill test: it stays to be read and counts no longer.") { code, reason, by };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var name = asked.GetValue(code)!;
            var newest = MillTests.Versions(mill, name);
            var (kept, faults) = MillTests.Strike(mill, name, asked.GetValue(reason)!, asked.GetValue(by)!, newest.Count, clock.GetCurrentInstant());
            if (kept is null)
            {
                return voice.Refuse(faults.Select(f => Fault.Told("--code", f)));
            }

            voice.Say($"{kept.Code} is struck in version {kept.Version}: {kept.Paper.Struck}");
            return Exit.Done;
        });
        return command;
    }

    private static void Say(KeptMillTest[] kept, DateTimeZone zone, Voice voice)
    {
        if (kept.Length == 0)
        {
            voice.Say("No mill test is kept: keep those of a file with evengrist milling tests add, or enter one on the page.");
            return;
        }

        var table = new TextTable("test", "taken", "by", "holds", "set otherwise", "version", "struck");
        foreach (var test in kept)
        {
            table.Add(test.Code, test.Paper.TakenAt.InZone(zone).LocalDateTime.ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture), test.Paper.TakenBy, MillTestWords.Holds(test.Paper), string.Join("; ", MillTestWords.Settings(test.Paper)), $"{test.Version}", test.Paper.Struck ?? "");
        }

        table.To(voice);
    }
}
