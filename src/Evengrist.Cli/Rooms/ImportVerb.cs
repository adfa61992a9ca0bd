using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Imports;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Brings a CSV or XLSX file into a mill: all of it or nothing.</summary>
internal sealed class ImportVerb
{
    private readonly Argument<string> file = new("FILE") { Description = "CSV in UTF-8 or XLSX; docs/import.md says how it is written" };
    private readonly Option<bool> dryRun = new("--dry-run") { Description = "list every fault and record nothing" };
    private readonly Option<string?> by = new("--by") { Description = "who records it", HelpName = "NAME" };
    private readonly Option<string?> mark = new("--decimal") { Description = "the file's decimal mark, where its numbers leave a doubt", HelpName = "comma|point" };
    private readonly Option<string?> zone = new("--zone") { Description = "zone of local times, such as Europe/Paris", HelpName = "ZONE" };
    private readonly Option<bool> json = new("--json") { Description = "answer in JSON" };
    private readonly MillOption where = new();

    private ImportVerb() => mark.AcceptOnlyFromAmong("comma", "point");

    public static Command Of(ImportKind kind, Voice voice, IClock clock)
    {
        var verb = new ImportVerb();
        var command = new Command("import", $"Brings {kind.ToString().ToLowerInvariant()} in from a file: all of it, or nothing and every fault. The same file twice adds nothing.")
        {
            verb.file, verb.dryRun, verb.by, verb.mark, verb.zone, verb.json,
        };
        verb.where.AddTo(command);
        command.SetAction(asked => verb.Run(asked, kind, voice, clock));
        return command;
    }

    private int Run(ParseResult asked, ImportKind kind, Voice voice, IClock clock)
    {
        var dry = asked.GetValue(dryRun);
        var name = asked.GetValue(by) ?? (dry ? "dry run" : throw new BadInput(new Fault(null, null, "--by", "", "who records this: give a name")));
        using var stream = Files.Open(asked.GetRequiredValue(file));
        var parsed = Import.Read(stream, kind, Options(asked));
        if (!parsed.Ok)
        {
            return voice.Refuse(parsed.Faults);
        }

        var batch = parsed.Value;
        using var mill = where.Open(asked, clock);
        IReadOnlyList<Fault> Rehearse() => mill.Ask(view => Rehearsal.Of(view.Book, batch, name, clock.GetCurrentInstant(), drafts => mill.NewAmong(drafts, batch.Source)));
        if (dry)
        {
            var faults = Rehearse();
            return faults.Count > 0 ? voice.Refuse(faults) : Say(asked, voice, new ImportAnswer(batch.Lines, 0, batch.Drafts.Count - mill.NewAmong(batch.Drafts, batch.Source).Count, true));
        }

        try
        {
            var receipt = mill.Record(batch.Drafts, name, batch.Source);
            return Say(asked, voice, new ImportAnswer(batch.Lines, receipt.Added, receipt.AlreadyKnown, false));
        }
        catch (LedgerRefusal refusal)
        {
            return voice.Refuse(Rehearse() is { Count: > 0 } faults ? faults : [batch.Explain(refusal)]);
        }
    }

    private ImportOptions Options(ParseResult asked)
    {
        var id = asked.GetValue(zone);
        return new ImportOptions
        {
            Decimal = asked.GetValue(mark) switch { "comma" => DecimalMark.Comma, "point" => DecimalMark.Point, _ => null },
            Zone = id is null ? null : DateTimeZoneProviders.Tzdb.GetZoneOrNull(id)
                ?? throw new BadInput(new Fault(null, null, "--zone", Fault.Show(id), "a zone of the tz database, such as America/Chicago or Europe/Paris")),
        };
    }

    private int Say(ParseResult asked, Voice voice, ImportAnswer answer) => voice.Answer(asked.GetValue(json), answer, a => voice.Say(a.DryRun
        ? $"{a.Rows} rows, no fault found. Nothing was recorded; {a.AlreadyKnown} of the facts are known already."
        : $"{a.Rows} rows: {a.Added} facts recorded, {a.AlreadyKnown} known already."));

    private sealed record ImportAnswer(int Rows, int Added, int AlreadyKnown, bool DryRun);
}
