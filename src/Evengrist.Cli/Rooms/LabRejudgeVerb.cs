using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Records.Laboratory;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Lots that hang on an instrument that read wrong.</summary>
internal static class LabRejudgeVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (instrument, what) = (new Option<string>("--instrument") { Description = "as readings name it", HelpName = "NAME", Required = true }, new Option<string>("--property") { Description = "Protein, Ash, Moisture …", HelpName = "NAME", Required = true });
        var (from, until) = (MomentOption.Of("--from", "since when it read wrong"), MomentOption.Of("--until", "when it was right again"));
        var (bias, twice) = (new Option<double>("--bias") { Description = "how much too high it read, unit and basis of the readings; below 0 for too low", HelpName = "NUMBER", Required = true }, new Option<double>("--pm") { Description = "± of that, k = 2; 0 when left out", HelpName = "NUMBER" });
        var (asof, json) = (MomentOption.Of("--asof", "as of a moment; now when left out"), new Option<bool>("--json") { Description = "answer in JSON, and nothing else on standard output" });
        var command = new Command("rejudge", "Lots that hang on an instrument that read wrong over a span: their odds as judged and put right, what has gone. Changes nothing.") { instrument, what, from, until, bias, twice, asof, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            Instant Moment(Option<string?> option) => MomentOption.Read(asked, option) ?? throw new BadInput(new Fault(null, null, option.Name, "", "a moment like 2025-10-07T16:20:00Z"));
            var property = Enum.TryParse<Property>(asked.GetValue(what), ignoreCase: true, out var named) && Enum.IsDefined(named) ? named : throw new BadInput(new Fault(null, null, "--property", Fault.Show(asked.GetValue(what)!), "a property of readings: Protein, Ash, Moisture …"));
            var wrong = new WrongSpan(asked.GetValue(instrument)!, property, Moment(from), Moment(until), asked.GetValue(bias), asked.GetValue(twice) / 2);
            using var mill = where.Open(asked, clock);
            var lots = RejudgeLots.Of(mill, wrong, MomentOption.Read(asked, asof) ?? clock.GetCurrentInstant(), out var faults);
            return faults.Count > 0 ? throw new BadInput([.. faults.Select(f => Fault.Told("rejudge", f))]) : voice.Answer(asked.GetValue(json), lots.Select(l => RejudgedLotAnswer.Of(l.Again, l.Seen.State.ToString(), l.Seen.Gone)).ToArray(), answer => Say(answer, voice));
        });
        return command;
    }

    private static void Say(RejudgedLotAnswer[] lots, Voice voice)
    {
        voice.Say(string.Create(CultureInfo.InvariantCulture, $"{lots.Length} lots hang on it."));
        var table = new TextTable("lot", "state", "wrong readings", "as judged", "chance", "put right", "chance", "gone t", "to");
        foreach (var lot in lots)
        {
            table.Add(
                lot.Lot, lot.State, Number(lot.Wrong, 0), Number((double?)lot.Before.Result, 3), Number(lot.Before.Chance, 3), Number((double?)lot.After.Result, 3), Number(lot.After.Chance, 3), Number((double)lot.GoneTonnes, 1), string.Join(", ", lot.Customers));
        }

        table.To(voice);
    }
}
