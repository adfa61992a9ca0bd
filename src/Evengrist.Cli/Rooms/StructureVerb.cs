using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;
using Evengrist.Tracing.Structure;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>How large a recall would be, from the records and on paper.</summary>
internal static class StructureVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var (from, until, asOf) = (MomentOption.Of("--from", "trucks that came from then on; 180 days before the moment looked at when left out"), MomentOption.Of("--until", "trucks that came before then; the moment looked at when left out"), MomentOption.Of("--as-of", "the moment looked at; the newest when left out, and in the demonstration the moment it opens at"));
        var threshold = new Option<decimal>("--threshold") { Description = "kg of a truck in a package up to which the package does not count; 0 when left out", HelpName = "KG" };
        var most = new Option<int>("--most") { Description = "most trucks to trace; 400 when left out. Of more, every so-manieth is", HelpName = "N", DefaultValueFactory = _ => 400 };
        var (posed, where) = (new PosedVerb(), new MillOption());
        var command = new Command("structure", "How large a recall would be for a truck: from the records as the mill works today, or with --in on paper under other ways of keeping lots apart. It advises; it clears nothing.") { from, until, asOf, threshold, most };
        posed.AddTo(command, StructureCase.Help);
        where.AddTo(command);
        command.SetAction(asked =>
        {
            if (posed.IsPosed(asked))
            {
                return voice.Answer(posed.Json(asked), posed.Ask(asked, StructureCase.Read, c => Parsing.Got(StructureAnswer.Of(c))), answer => Say(answer, voice));
            }

            if (asked.GetValue(threshold) is < 0m or > 1_000_000m || asked.GetValue(most) is < 1 or > 100_000)
            {
                throw new BadInput(new Fault(null, null, asked.GetValue(most) is < 1 or > 100_000 ? "--most" : "--threshold", "", asked.GetValue(most) is < 1 or > 100_000 ? "1 to 100 000 trucks" : "kilograms from 0 to 1 000 000"));
            }

            using var mill = where.Open(asked, clock);
            var at = MomentOption.LookedAt(MomentOption.Read(asked, asOf), mill, clock);
            var (begin, end) = (MomentOption.Read(asked, from) ?? at - Duration.FromDays(180), MomentOption.Read(asked, until) ?? at);
            if (end <= begin)
            {
                throw new BadInput(new Fault(null, null, "--until", "", "a moment after --from"));
            }

            var question = new PracticeQuestion(begin, end, at) { Threshold = Mass.FromKilograms(asked.GetValue(threshold)), MostTraced = asked.GetValue(most) };
            var outcome = mill.Ask(view => PracticeModel.Answer(view.Book, view.Tracer(), question));
            return outcome.Trucks.Count == 0 ? voice.NoAnswer(outcome.TrucksInSpan == 0 ? "No truck came in that span: say another with --from and --until." : "No truck of that span has reached a package yet: say an earlier span with --from and --until.")
                : voice.Answer(posed.Json(asked), PracticeAnswer.Of(outcome), answer => Say(answer, voice));
        });
        return command;
    }

    private static void Say(PracticeAnswer answer, Voice voice)
    {
        var table = new TextTable("bins empty", "expected t", "by mass t", "worst t", "links");
        foreach (var size in answer.Sizes)
        {
            table.Add(size.Outflow switch { "coreFirst" => "core first", "stirred" => "stirred", "any" => "under any", _ => "first in first out" }, Tonnes(size.ExpectedTonnes), Tonnes(size.ExpectedByMassTonnes), Tonnes(size.WorstTonnes), size.Links.ToString(CultureInfo.InvariantCulture));
        }

        table.To(voice);
        voice.Say($"Reckoned. {answer.Says} {answer.NotPackedYet} of them have reached no package yet and are in no mean.{(answer.StandardErrorTonnes > 0 ? $" Standard error of the mean under any: {Tonnes(answer.StandardErrorTonnes)} t." : "")} It advises and clears nothing.");
    }

    private static void Say(StructureAnswer answer, Voice voice)
    {
        var table = new TextTable("way", "expected t", "worst t", "trucks a lot", "set aside t", "clean-outs", "hours");
        foreach (var way in answer.Ways)
        {
            table.Add(Fault.Show(way.Name), Tonnes(way.ExpectedTonnes), Tonnes(way.WorstTonnes), Tonnes(way.TrucksEachLot), Tonnes(way.SetAsideTonnes), way.CleanOuts.ToString(CultureInfo.InvariantCulture), Tonnes(way.Hours));
        }

        table.To(voice);
        voice.Say("On paper: one wheat, one flour, nothing left in legs and machines. It advises and clears nothing.");
    }

    private static string Tonnes(double tonnes) => tonnes.ToString("#,##0.0", CultureInfo.InvariantCulture);
}
