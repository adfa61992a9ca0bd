using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Charts;
using Evengrist.Plant;
using Evengrist.Records.Laboratory;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Limits of the mill's charts, frozen from a stated period.</summary>
internal static class LabLimitsVerbs
{
    public static Command Of(Voice voice, IClock clock) => new("limits", "Limits of the mill's charts, frozen from a stated period, by version.") { Show(voice, clock), Freeze(voice, clock) };

    private static Command Show(Voice voice, IClock clock)
    {
        var (where, asOf, json) = (new MillOption(), MomentOption.Of("--asof", "what can be charted by then; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("show", "What can be charted, and every version of its limits.") { asOf, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var frozen = ChartBooks.Limits(mill);
            Line[] lines = [.. mill.Ask(view => ChartSeries.Of(view.Book, MomentOption.Read(asked, asOf) ?? clock.GetCurrentInstant())).SelectMany(s => frozen[s.Code].Select(v => (Line?)Line.Of(s, v)).DefaultIfEmpty(new Line(s.Code, s.Readings.Count)).OfType<Line>())];
            return voice.Answer(asked.GetValue(json), lines, all =>
            {
                var table = new TextTable("chart", "readings", "version", "from", "until", "of", "lower", "centre", "upper", "by", "why");
                foreach (var l in all)
                {
                    table.Add(l.Chart, Number(l.Readings, 0), Number(l.Version, 0), l.From ?? "", l.Until ?? "", Number(l.Taken, 0), Number(l.Lower, 3), Number(l.Centre, 3), Number(l.Upper, 3), l.By ?? "", l.Reason ?? "not frozen");
                }

                table.To(voice);
            });
        });
        return command;
    }

    private static Command Freeze(Voice voice, IClock clock)
    {
        var where = new MillOption();
        Option<string> Words(string name, string says) => new(name) { Description = says, HelpName = "WORDS", Required = true };
        var (chart, reason, by) = (Words("--chart", "which, as show lists it"), Words("--reason", "why now"), Words("--by", "who freezes them"));
        var (from, until) = (MomentOption.Of("--from", "the period's beginning"), MomentOption.Of("--until", "the period's end"));
        from.Required = until.Required = true;
        Option<double?> Figure(string name, string says) => new(name) { Description = says, HelpName = "NUMBER" };
        var (target, lower, upper) = (Figure("--target", "what is wanted"), Figure("--lower", "the flour's lower limit"), Figure("--upper", "the flour's upper limit"));
        var rules = new Option<string>("--rules") { Description = $"rules that are looked for: {string.Join(", ", RunRules.Sets.Keys)}", HelpName = "SET", DefaultValueFactory = _ => "Four" };
        var command = new Command("freeze", $"Freezes the limits of a chart from a period of {FrozenLimits.Fewest} readings or more, as the next version. Earlier versions stay.") { chart, from, until, target, lower, upper, rules, reason, by };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var set = RunRules.Sets.TryGetValue(asked.GetValue(rules)!, out var found) ? found : throw new BadInput(new Fault(null, null, "--rules", Fault.Show(asked.GetValue(rules)!), string.Join(", ", RunRules.Sets.Keys)));
            var freeze = new FreezeLimits(asked.GetValue(chart)!, (MomentOption.Read(asked, from)!.Value, MomentOption.Read(asked, until)!.Value), (asked.GetValue(target), asked.GetValue(lower), asked.GetValue(upper)), set, asked.GetValue(reason)!);
            using var mill = where.Open(asked, clock);
            if (freeze.In(mill, asked.GetValue(by)!, clock.GetCurrentInstant()) is { Count: > 0 } faults)
            {
                return voice.Refuse([.. faults.Select(f => Fault.Told("limits", f))]);
            }

            var (limits, version, _, _) = ChartBooks.Limits(mill).First(g => g.Key.Equals(freeze.Chart.Trim(), StringComparison.OrdinalIgnoreCase)).First();
            voice.Say($"{limits.Code}: version {version} from {limits.Count} readings, centre {Number(limits.Centre, 3)}, one standard deviation {Number(limits.Sigma, 4)}.");
            return Exit.Done;
        });
        return command;
    }

    private sealed record Line(string Chart, int Readings, int? Version = null, string? From = null, string? Until = null, int? Taken = null, double? Lower = null, double? Centre = null, double? Upper = null, string? By = null, string? Reason = null)
    {
        public static Line Of(ChartSeries series, (FrozenLimits Limits, int Version, string By, Instant Kept) v)
        {
            var around = IndividualsChart.Around(v.Limits.Centre, v.Limits.Sigma);
            return new(series.Code, series.Readings.Count, v.Version, $"{v.Limits.From}", $"{v.Limits.Until}", v.Limits.Count, around.Lower, around.Centre, around.Upper, v.By, v.Limits.Reason);
        }
    }
}
