using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers.Paying;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Cli.Rooms;

/// <summary>Statements of growers and the season report, from the records.</summary>
internal static class StatementVerbs
{
    public static Command Statement(Voice voice, IClock clock)
    {
        var grower = new Option<string?>("--grower") { Description = "code or name of the grower", HelpName = "CODE" };
        var asked = new SpanVerb("statement", "What a grower delivered over a span of milling days, ticket by ticket, and what is left to pay.");
        asked.Command.Add(grower);
        asked.Command.SetAction(line =>
        {
            var wanted = line.GetValue(grower)?.Trim() is { Length: > 0 } named ? named : throw new BadInput(new Fault(null, null, "--grower", "", "code or name of a grower"));
            var (span, loads) = asked.Loads(line, clock);
            var found = Intake.Paying.Statement.Of(
                loads.Where(l => l.GrowerCode.Equals(wanted, StringComparison.OrdinalIgnoreCase) || l.GrowerName.Equals(wanted, StringComparison.OrdinalIgnoreCase)), span.From, span.Until, Basis.At12);
            return found.Count == 0
                ? voice.NoAnswer($"No load of {Fault.Show(wanted)} came from {span}. Loads came from: {string.Join(", ", loads.Select(l => l.GrowerCode).Distinct(StringComparer.OrdinalIgnoreCase).Order(StringComparer.OrdinalIgnoreCase).Take(40))}.")
                : voice.Answer(asked.Json(line), found.Select(StatementAnswer.Of).ToArray(), _ => Say(found, voice));
        });
        return asked.Command;
    }

    public static Command Season(Voice voice, IClock clock)
    {
        var asked = new SpanVerb("season-report", "Quality and value of a season by field, district and variety, with what moved the price.");
        asked.Command.SetAction(line =>
        {
            var (span, loads) = asked.Loads(line, clock);
            var reports = SeasonReport.Of(loads, span.From, span.Until, Basis.At12);
            return reports.Count == 0 ? voice.NoAnswer($"No load came from {span}.") : voice.Answer(asked.Json(line), reports.Select(SeasonAnswer.Of).ToArray(), _ => Say(reports, voice));
        });
        return asked.Command;
    }

    private static void Say(IReadOnlyList<Statement> statements, Voice voice)
    {
        foreach (var statement in statements)
        {
            voice.Say($"{statement.Grower} {statement.Name}, {statement.From:R} to {statement.Until:R}");
            var tickets = new TextTable("ticket", "field", "net kg", "bushels", "pay", "paid", "left", "how far");
            foreach (var account in statement.All.Accounts)
            {
                tickets.Add(account.Load.Truck.Code, Intake.Paying.Statement.FieldName(account.Load), Shown.Digits(account.Load.Net.Kilograms, 0), account.Settled is { } settled ? Shown.Digits(settled.Bushels, 2) : "",
                    Amount(account.Settled?.Pay), Amount(account.Paid), Amount(account.Left), account.Stage.ToString());
            }

            tickets.To(voice);
            Groups([.. statement.Fields, statement.All], voice);
            voice.Say($"pay {statement.All.Gross?.ToString() ?? "none"}, advances {statement.All.Advances?.ToString() ?? "none"}, paid {statement.All.Paid?.ToString() ?? "nothing"}, left {statement.All.Left?.ToString() ?? "not known"}");
        }
    }

    private static void Say(IReadOnlyList<SeasonReport> reports, Voice voice)
    {
        foreach (var report in reports)
        {
            voice.Say($"{report.From:R} to {report.Until:R}{(report.Currency.Length > 0 ? ", " + report.Currency : ", without a contract")}");
            foreach (var rows in new[] { report.Districts, report.Varieties, report.Fields })
            {
                Groups([.. rows.Select(r => r.Group)], voice);
            }

            foreach (var row in report.Fields.Where(r => r.Rank is not null))
            {
                voice.Say($"{row.Group.Name}: {row.Rank} of {row.Of} in {row.District}. {row.Words}");
            }
        }
    }

    private static void Groups(IEnumerable<LoadGroup> groups, Voice voice)
    {
        var table = new TextTable([.. new[] { "group", "loads", "net t" }, .. QualityAverage.Properties.Select(p => p.Words()), "pay", "a bushel", "a tonne net"]);
        foreach (var group in groups)
        {
            table.Add([.. new[] { group.Name, Shown.Digits(group.Standing.Count, 0), Shown.Digits(group.Net.Tonnes, 2) },
                .. QualityAverage.Properties.Select(p => group.Read(p) is { } read ? Shown.Digits(read.Figure.Value, read.Figure.Decimals) : ""), Amount(group.Gross), Each(group.EachBushel, 3), Each(group.EachTonne, 2)]);
        }

        table.To(voice);
    }

    private static string Amount(Money? money) => money is { } one ? Shown.Digits(one.Amount, 2) : "";

    private static string Each(Money? each, int decimals) => each is { } one ? Shown.Digits(one.Amount, decimals) : "";

    /// <summary>A verb that asks loads of a span of milling days.</summary>
    private sealed class SpanVerb
    {
        private readonly Option<string?> from = new("--from") { Description = "first milling day, 2025-07-09; the crop year of the moment asked as of when left out", HelpName = "DATE" };
        private readonly Option<string?> until = new("--until") { Description = "last milling day", HelpName = "DATE" };
        private readonly Option<string?> asOf = MomentOption.Of("--as-of", "the moment looked at; now when left out, and in the demonstration the moment it opens at");
        private readonly Option<bool> json = new("--json") { Description = "answer in JSON, and nothing else on standard output" };
        private readonly MillOption where = new();

        public SpanVerb(string name, string meaning)
        {
            Command = new Command(name, meaning) { from, until, asOf, json };
            where.AddTo(Command);
        }

        public Command Command { get; }

        public bool Json(ParseResult line) => line.GetValue(json);

        public (SeasonSpan Span, IReadOnlyList<LoadFacts> Loads) Loads(ParseResult line, IClock clock)
        {
            var (first, last, moment) = (Day(line, from), Day(line, until), MomentOption.Read(line, asOf));
            using var mill = where.Open(line, clock);
            var settings = mill.Settings;
            var at = moment ?? settings.OpensAt ?? clock.GetCurrentInstant();
            var season = SeasonSpan.Around(MillingDay.Of(at, settings.Zone, settings.DayStart));
            var span = new SeasonSpan(first ?? season.From, last ?? season.Until);
            if (span.Until < span.From)
            {
                throw new BadInput(new Fault(null, null, "--until", Fault.Show($"{span.Until:R}"), $"a day not before {span.From:R}"));
            }

            var shelf = TradeShelf.Of(mill);
            return (span, mill.Ask(view => shelf.Reader(view, at).All().Where(l => span.Holds(l.Day)).ToList()));
        }

        private static LocalDate? Day(ParseResult line, Option<string?> option)
        {
            if (line.GetValue(option) is not { } text)
            {
                return null;
            }

            var read = LocalDatePattern.Iso.Parse(text);
            return read.Success ? read.Value : throw new BadInput(new Fault(null, null, option.Name, Fault.Show(text), "a date such as 2025-07-09"));
        }
    }
}
