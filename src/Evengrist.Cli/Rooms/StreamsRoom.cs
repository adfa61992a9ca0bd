using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Flour streams: the ash curve, the best divide and additions.</summary>
internal static class StreamsRoom
{
    public static Command Of(Voice voice, IClock clock) => new("streams", "Flour streams: from the least ash to the most, what runs together into which flour, and what is added.") { Curve(voice), DivideVerb.Of(voice), AdditionsVerb.Of(voice), SurveyVerbs.Of(voice, clock) };

    private static Command Curve(Voice voice)
    {
        var command = new Command("curve", "The ash and protein curve of a posed stream survey, where flour of an ash ends, and what given products come to. Opens no valve, needs no records.");
        var posed = new PosedVerb();
        posed.AddTo(command, StreamsCurveCase.Help);
        command.SetAction(asked => voice.Answer(posed.Json(asked), posed.Ask(asked, StreamsCurveCase.Read, c => Parsing.Got(StreamsCurveAnswer.Of(c))), answer => Say(answer, voice)));
        return command;
    }

    private static void Say(StreamsCurveAnswer answer, Voice voice)
    {
        voice.Say($"ash and protein in % on {answer.Basis}; yield in % of the wheat of the survey");
        var table = new TextTable("stream", "yield", "ash", "protein", "together", "of flour", "its ash", "its protein");
        foreach (var p in answer.Points)
        {
            table.Add(p.Stream, Number(p.Yield, 2), Number(p.AshPercent, 3), Number(p.ProteinPercent, 2), Number(p.TogetherYield, 2), Number(p.OfFlourPercent, 1), Number(p.TogetherAshPercent, 4), Number(p.TogetherProteinPercent, 2));
        }

        table.To(voice);
        foreach (var cut in answer.Cuts)
        {
            voice.Say($"ash {Number(cut.AshPercent, 3)}: " + (cut.Yield <= 0 ? "no flour keeps it: even the first stream has more" : $"{Number(cut.Yield, 2)} of the wheat, {Number(cut.OfFlourPercent, 1)} of the flour"
                + (cut.Divided is { } stream ? $"; {stream} is divided after {Number(cut.DividedYield, 2)}" : "; all flour together keeps it")));
        }

        var sums = new TextTable("flour", "yield", "of flour", "ash", "protein", "US \"flour\" by ash");
        foreach (var sum in (StreamSumAnswer[])[.. answer.Products, .. answer.Left is { } left ? [left] : Array.Empty<StreamSumAnswer>(), answer.Straight])
        {
            sums.Add(sum.Code, Number(sum.Yield, 2), Number(sum.OfFlourPercent, 1), Number(sum.AshPercent, 3), Number(sum.ProteinPercent, 2), sum.MayBeCalledFlour switch { true => "yes", false => "no: too much ash", null => "protein was not read" });
        }

        sums.To(voice);
        voice.Say($"Most ash of \"flour\": {answer.Identity}. Other markets have their own rule.");
        voice.Say("Advice: a person sets the valves.");
    }
}
