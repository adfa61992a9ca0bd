using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Records.Streams;
using Evengrist.Streams.Surveys;
using NodaTime;
using static Evengrist.Cli.Said.Amounts;

namespace Evengrist.Cli.Rooms;

/// <summary>Stream surveys that a mill keeps: what is kept, and keeping one.</summary>
internal static class SurveyVerbs
{
    public static Command Of(Voice voice, IClock clock) => new("survey", "Stream surveys kept with the mill: what is kept, and keeping one.") { Show(voice, clock), Keep(voice, clock) };

    private static Command Show(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var (unit, json) = (new Option<string?>("--unit") { Description = "one unit alone", HelpName = "CODE" }, new Option<bool>("--json") { Description = "answer in JSON, streams with it, and nothing else on standard output" });
        var command = new Command("show", "The stream surveys kept, by unit, the first version first.") { unit, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            var of = asked.GetValue(unit);
            StreamSurveyAnswer[] kept = [.. StreamSurveys.All(mill).Where(k => of is null || k.Survey.Unit.Equals(of, StringComparison.OrdinalIgnoreCase)).Select(k => StreamSurveyAnswer.Of(k.Version, k.By, k.Recorded, k.Survey))];
            return voice.Answer(asked.GetValue(json), new StreamSurveysAnswer(kept), answer => Say(answer, voice));
        });
        return command;
    }

    private static Command Keep(Voice voice, IClock clock)
    {
        var where = new MillOption();
        var file = new Option<string>("--in") { Description = "the survey as JSON: unit, takenAt, takenBy, wheatTonnesPerHour, table with basis and streams; or - for standard input", HelpName = "FILE", Required = true };
        var by = new Option<string>("--by") { Description = "who keeps it", HelpName = "NAME", Required = true };
        var command = new Command("keep", "Keeps a stream survey as its unit's next version.") { file, by };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var name = asked.GetValue(file)!;
            using var reader = new StreamReader(name == "-" ? Console.OpenStandardInput() : Files.Open(name));
            if (!StreamSurvey.TryRead(reader.ReadToEnd(), out var survey, out var faults))
            {
                return Refuse(faults);
            }

            using var mill = where.Open(asked, clock);
            (var kept, faults) = StreamSurveys.Keep(mill, survey, asked.GetValue(by)!);
            if (kept is null)
            {
                return Refuse(faults);
            }

            voice.Say(string.Create(CultureInfo.InvariantCulture, $"The survey of {kept.Survey.Unit}, version {kept.Version}, is kept: {kept.Survey.Table.Streams.Count} streams."));
            return Exit.Done;

            int Refuse(IReadOnlyList<string> why) => voice.Refuse(why.Select(f => Fault.OfFile(name, $"a survey that can be. {f}")));
        });
        return command;
    }

    private static void Say(StreamSurveysAnswer answer, Voice voice)
    {
        if (answer.Surveys.Count == 0)
        {
            voice.Say("No stream survey is kept: keep one with evengrist streams survey keep, or on the page.");
            return;
        }

        var table = new TextTable("unit", "version", "taken", "by", "wheat t/h", "streams", "flour % of the wheat", "basis");
        foreach (var kept in answer.Surveys)
        {
            table.Add(kept.Unit, $"{kept.Version}", kept.TakenAt, kept.TakenBy, Number(kept.WheatTonnesPerHour, 2), $"{kept.Streams.Count}", Number(kept.Streams.Sum(s => s.Yield), 2), kept.Basis);
        }

        table.To(voice);
    }
}
