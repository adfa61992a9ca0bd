using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Streams.Additions;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>What goes into a flour after the rolls.</summary>
internal static class AdditionsVerb
{
    public static Command Of(Voice voice)
    {
        var command = new Command("additions", "Malt, gluten, ascorbic acid and enrichment of a posed flour: dose and feeder rate; what a feeder gave; flour that ran without; ash before enrichment; rework. Sets no feeder, needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, StreamsAdditionsCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, StreamsAdditionsCase.Read, c => Parsing.Got(StreamsAdditionsAnswer.Of(c))), answer => Say(answer, voice)));
        return command;
    }

    private static void Say(StreamsAdditionsAnswer answer, Voice voice)
    {
        var doses = new TextTable("what", "dose", "", "g/t", "g/min");
        Dose("malt", answer.Malt?.GramsPer100Kg, "g in 100 kg", answer.Malt?.Rate);
        Dose("gluten", answer.Gluten?.KilogramsPer100Kg, "kg to 100 kg", answer.Gluten?.Rate);
        Dose("ascorbic acid premix", answer.Ascorbic?.Rate.GramsPerTonne, "g/t", answer.Ascorbic?.Rate);
        Dose("enrichment premix", answer.Enrichment?.Rate.GramsPerTonne, "g/t", answer.Enrichment?.Rate);
        doses.To(voice);
        if (answer.Malt is { } malt)
        {
            voice.Say($"malt: {Number(malt.Slope, 5)} LN for 1 g in 100 kg, from {Number(malt.StartSeconds, 0)} s; dose ± {Number(2 * malt.StandardUncertainty, 1)} g (twice the standard uncertainty, of the slope alone)");
        }

        if (answer.Enrichment is { } rich)
        {
            var table = new TextTable("nutrient, mg/kg", "aim", "own", "comes to", "over %", "needs g/t");
            foreach (var n in rich.Nutrients)
            {
                table.Add(n.Name, Number(n.Aim, 3), Number(n.Own, 2), Number(n.ComesTo, 3), Number(n.OverPercent, 1), Number(n.NeedsGramsPerTonne, 2));
            }

            table.To(voice);
            voice.Say($"{rich.Market}, from {rich.From}: {rich.Source}.");
        }

        if (answer.Feeder is { } found)
        {
            voice.Say($"feeder: {Number(found.GramsPerTonne, 1)} ± {Number(2 * found.StandardUncertainty, 1)} g/t found" + (found.SetGramsPerTonne is { } set ? $", {Number(set, 1)} set: {Number(found.OffPercent, 1)} % off, {(found.IsOff == true ? "more than the weighing can be wrong: look at the feeder" : "within the weighing")}" : ""));
        }

        foreach (var line in (string[])[
            .. answer.TonnesWithout is { } without ? [$"{Number(without, 2)} t of flour ran while the feeder stood"] : Array.Empty<string>(), .. answer.AshBefore is { } ash ? [$"ash before the addition: {Number(ash, 4)} %"] : Array.Empty<string>(),
            .. answer.Rework is { } rework ? [.. rework.Values.Select(v => $"rework: {v.What} would be {Number(v.With, 3)}"), $"rework: at most {Number(rework.MostPercent, 1)} % of the run", .. rework.Against.Select(a => $"against it: {a}"), .. rework.Remarks] : Array.Empty<string>(),
            .. (answer.Malt?.Remarks ?? []).Select(r => $"malt: {r}"), .. (answer.Ascorbic?.Remarks ?? []).Select(r => $"ascorbic acid: {r}"), answer.Note])
        {
            voice.Say(line);
        }

        void Dose(string what, double? dose, string unit, FeedRate? rate)
        {
            if (rate is not null)
            {
                doses.Add(what, Number(dose, 4), unit, Number(rate.GramsPerTonne, 2), Number(rate.GramsPerMinute, 2));
            }
        }
    }
}
