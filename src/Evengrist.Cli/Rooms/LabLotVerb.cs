using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Lots;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Records.Laboratory;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>A lot held against its specification, and what a named person decides of it.</summary>
internal static class LabLotVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var code = new Argument<string>("LOT") { Description = "code of the lot: flour, day and part, as WB-251007-2" };
        var specification = new Option<string?>("--specification") { Description = "the customer's; the mill's own when left out", HelpName = "CODE" };
        var decide = new Option<string?>("--decide") { Description = "Release, Hold, Rework or Downgrade; nothing is decided when left out", HelpName = "VERDICT" };
        var (by, reason, other) = (new Option<string>("--by") { Description = "with --decide: who, one of those who may", HelpName = "NAME", DefaultValueFactory = _ => "" }, new Option<string>("--reason") { Description = "with --decide: why; may be left out only for a release that the figures advise", HelpName = "WORDS", DefaultValueFactory = _ => "" }, new Option<string>("--as") { Description = "with --decide Downgrade: the flour it may go as", HelpName = "FLOUR", DefaultValueFactory = _ => "" });
        var (asof, json) = (MomentOption.Of("--asof", "as of a moment; with --decide, when it is decided; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("lot", "A lot held against its specification, line by line, with what the figures advise; with --decide, a named person releases it, holds it, sends it to rework or downgrades it.") { code, specification, decide, by, reason, other, asof, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var (lot, at, held) = (asked.GetRequiredValue(code), MomentOption.Read(asked, asof) ?? clock.GetCurrentInstant(), asked.GetValue(specification));
            if (asked.GetValue(decide) is { } wanted)
            {
                var verdict = Enum.GetValues<LotVerdict>().FirstOrDefault(v => v.ToString().Equals(wanted, StringComparison.OrdinalIgnoreCase));
                var decided = new DecideLot(lot, verdict, asked.GetValue(reason)!, at) { As = asked.GetValue(other)!, Specification = held ?? "" }.In(mill, asked.GetValue(by)!);
                if (decided.Decision is null)
                {
                    return voice.Refuse([.. decided.Faults.Select(f => Fault.Told("--decide", f))]);
                }
            }

            return LotShelf.Find(mill, lot, at, held) is { } seen
                ? voice.Answer(asked.GetValue(json), LabLotAnswer.Of(seen.Lot, seen.State.ToString(), seen.Packages, seen.Judged?.Title, seen.Advice, seen.Results, seen.Decisions), answer => Say(answer, voice))
                : voice.Refuse([Fault.Told("LOT", $"There is no lot {lot} with a package by then: codes are flour, day and part, as WB-251007-2.")]);
        });
        return command;
    }

    private static void Say(LabLotAnswer lot, Voice voice)
    {
        voice.Say(string.Create(CultureInfo.InvariantCulture, $"{lot.Lot}, {lot.Tonnes:0.0} t: {lot.State.ToLowerInvariant()}; {lot.Here} packages here, {lot.OnHold} on hold, {lot.Gone} gone to customers"));
        voice.Say(lot.Specification is null ? "No specification of its flour holds on its day: nothing is judged." : $"held against {lot.Specification}");
        var table = new TextTable("property", "unit", "result", "read", "by", "from", "to", "chance", "advice");
        foreach (var line in lot.Results)
        {
            table.Add(
                line.What, $"{line.Unit} {line.Basis}".TrimEnd(), Number((double?)line.Result, 3), Number((double?)line.AsRead, 3), $"{line.Method} {line.Instrument}".TrimEnd(), Number((double?)line.Lower, 3), Number((double?)line.Upper, 3),
                Number(line.Chance, 4), line.Advice);
        }

        table.To(voice);
        voice.Say([.. lot.Results.SelectMany(r => new[] { r.WhyNot, r.OutOfCheck }).Where(w => w.Length > 0)]);
        voice.Say([.. lot.Decisions.Select(d => string.Create(CultureInfo.InvariantCulture, $"{d.At:yyyy-MM-dd HH:mm zzz}: {d.Verdict}{(d.As.Length > 0 ? $" as {d.As}" : "")} by {d.By}{(d.Reason.Length > 0 ? $": {d.Reason}" : "")}"))]);
        voice.Say($"the figures advise: {lot.Advice ?? "nothing"}. A named person decides.");
    }
}
