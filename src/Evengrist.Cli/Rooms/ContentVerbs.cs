using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Ledger;
using Evengrist.Packing.NetContent;
using Evengrist.Plant;
using Evengrist.Plant.Cases;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Checkweighers' files and what they say.</summary>
internal static class ContentVerbs
{
    public static Command Of(Voice voice, IClock clock) => new("content", "Net content by checkweighers: files brought in, how packages stand against their label.") { Import(voice, clock), Show(voice, clock) };

    private static Command Import(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Argument<string>("FILE") { Description = $"CSV or XLSX, one row for each package, with the headings {string.Join(", ", WeighingColumns.All.Select(c => c.Name))}; weights with their unit, as gross [g]" };
        var (by, reason, called) = (new Option<string?>("--by") { Description = "who keeps it", HelpName = "NAME" }, new Option<string>("--reason") { Description = "why what is asked about is right", HelpName = "WORDS", DefaultValueFactory = _ => "" },
            new Option<string?>("--called") { Description = "what its own headings mean: \"Gewicht = gross [kg]; Zeit = moment\"", HelpName = "WORDS" });
        var dry = new Option<bool>("--dry-run") { Description = "says what would be, and keeps nothing" };
        var command = new Command("import", "A checkweigher's file, up to a million packages: all of it or nothing. The same file twice adds nothing.") { file, by, reason, called, dry };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var name = asked.GetValue(by) ?? (asked.GetValue(dry) ? "dry run" : throw new BadInput(Fault.Told("--by", "Say who keeps it.")));
            var (headings, fault) = WeighingSpec.ReadCalled(asked.GetValue(called));
            if (fault is not null)
            {
                throw new BadInput(Fault.Told("--called", fault));
            }

            var now = mill.Settings.OpensAt is { } opens ? Instant.Max(opens, clock.GetCurrentInstant()) : clock.GetCurrentInstant();
            using var stream = Files.Open(asked.GetRequiredValue(file));
            var read = WeighingFile.Read(stream, new WeighingSpec(mill.Settings.Zone, now, [.. Products.Newest(mill).Select(p => p.Product)], mill.Ask(view => view.Book.OfKind(PlaceKind.PackingLine).Select(p => p.Code).ToArray())) { Called = headings });
            if (!read.Ok)
            {
                return voice.Refuse(read.Faults);
            }

            var questions = read.Value.Questions;
            if (questions.Count > 0 && asked.GetValue(reason)!.Trim().Length == 0)
            {
                return voice.Refuse([.. questions.Select(q => Fault.ToldOfLine(q.Line, q.Words + " If it is right, say why with --reason."))]);
            }

            if (asked.GetValue(dry))
            {
                voice.Say($"{Amounts.Number(read.Value.Rows, 0)} package{(read.Value.Rows == 1 ? "" : "s")} of {read.Value.Hours.Count} hour{(read.Value.Hours.Count == 1 ? "" : "s")} could be kept; none was.");
                return Exit.Done;
            }

            var (added, known) = WeighedHours.Keep(mill, read.Value.Hours, name, questions.Count > 0 ? $"{string.Join(" ", questions.Select(q => q.Words))} Answered: {asked.GetValue(reason)!.Trim()}" : "");
            voice.Say($"{Amounts.Number(read.Value.Rows, 0)} packages: {Amounts.Number(added, 0)} kept, {Amounts.Number(known, 0)} known already.");
            return Exit.Done;
        });
        return command;
    }

    private static Command Show(Voice voice, IClock clock)
    {
        var (where, law, price, asOf, json) = (new MillOption(), new Option<string>("--law") { Description = "US or EU", HelpName = "LAW", DefaultValueFactory = _ => "EU" }, new Option<decimal?>("--price") { Description = "what a tonne is worth" }, MomentOption.Of("--asof", "the moment looked at; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("show", $"Each line and product of the last {ContentStand.Days} days: the sample of the last hour by the plan, tare, fill to aim at, giveaway.") { law, price, asOf, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var rules = Enum.TryParse<NetRules>(asked.GetValue(law), ignoreCase: true, out var read) && read != NetRules.None ? read : throw new BadInput(Fault.Told("--law", "US or EU."));
            using var mill = where.Open(asked, clock);
            var zone = mill.Settings.Zone;
            Line[] lines = [.. ContentStand.All(mill, new ContentOptions(rules) { PricePerTonne = asked.GetValue(price) }, MomentOption.Read(asked, asOf) ?? mill.Settings.OpensAt ?? clock.GetCurrentInstant()).Select(s => new Line(
                s.Line, s.Product.Code, s.Last.From.InZone(zone).ToString("uuuu-MM-dd HH:mm", CultureInfo.InvariantCulture), s.Last.Passed.Count, s.Label.Grams, s.Spread.Mean, s.Spread.Deviation, s.Passes, s.Short.Short, s.Correction, s.IsTareWrong, s.ToPack, s.Now.KilogramsADay, s.Now.MoneyADay))];
            return voice.Answer(asked.GetValue(json), lines, all =>
            {
                var table = new TextTable("line", "product", "hour", "packages", "label g", "mean g", "SD g", "sample", "short", "tare off g", "aim g", "away kg/day");
                foreach (var l in all)
                {
                    table.Add(l.Place, l.Product, l.Hour, Amounts.Number(l.Packages, 0), Amounts.Number(l.LabelGrams, 1), Amounts.Number(l.MeanGrams, 1), Amounts.Number(l.DeviationGrams, 2), l.Passes switch { true => "passes", false => "does not pass", null => "none yet" },
                        Amounts.Number(l.Short, 0), (l.IsTareWrong ? "! " : "") + Amounts.Number(l.TareOffGrams, 1), l.AimGrams is { } aim ? Amounts.Number(aim, 1) : "", Amounts.Number(l.GiveawayKilogramsADay, 1));
                }

                table.To(voice);
                voice.Say(rules == NetRules.US ? "Plans and allowed variations of NIST Handbook 133 are from memory: check them against the edition in force before use." : "Tolerable errors above 1 kg and their rounding are from memory: check them against the law in force before use.");
            });
        });
        return command;
    }

    private sealed record Line(string Place, string Product, string Hour, int Packages, double LabelGrams, double MeanGrams, double DeviationGrams, bool? Passes, int Short, double TareOffGrams, bool IsTareWrong, double? AimGrams, double GiveawayKilogramsADay, decimal? GiveawayMoneyADay);
}
