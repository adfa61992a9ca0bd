using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Where something came from, and what something has reached.</summary>
internal static class TracingRoom
{
    public static Command Of(Voice voice, IClock clock) => new("tracing", "Where something came from, and what something has reached.")
    {
        Verb("roots", "Where a pallet, a load, a bin's content or a span of a line came from: shares by truck and field, least, expected and most.",
            voice, clock, TraceAnswer.Roots, (tracer, question) => RootsAnswer.Of(tracer.Roots(question)), TraceWords.Say, a => a.Nothing),
        Verb("reach", "What a truck, field, lot or span of hours has reached: packages, customers, and where the rest is.",
            voice, clock, TraceAnswer.Reach, (tracer, question) => ReachAnswer.Of(tracer.Reach(question)), TraceWords.Say, a => a.Nothing),
        StructureVerb.Of(voice, clock),
        RecallVerb.Of(voice, clock),
        DrillVerb.Of(voice, clock),
    };

    private static Command Verb<T>(
        string name, string meaning, Voice voice, IClock clock, Func<TraceCase, Parsed<T>> posedAnswer, Func<Tracer, TraceQuestion, T> answer, Action<T, Voice> say, Func<T, string?> nothing)
        where T : class
    {
        var codes = new Argument<string[]>("CODE") { Description = "codes of places in the records: a pallet, a ticket, a field, a bin", Arity = ArgumentArity.ZeroOrMore };
        var (from, until, asOf) = (MomentOption.Of("--from", "only what left the place from then on"), MomentOption.Of("--until", "only what left it before then"), MomentOption.Of("--as-of", "the moment looked back from; the newest when left out, and in the demonstration the moment it opens at"));
        var threshold = new Option<decimal>("--threshold") { Description = "kg; packages with less are counted, not listed", HelpName = "KG" };
        var (posed, where) = (new PosedVerb(), new MillOption());
        var command = new Command(name, meaning) { codes, from, until, asOf, threshold };
        posed.AddTo(command, TraceCase.Help);
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var named = asked.GetValue(codes) ?? [];
            if (posed.IsPosed(asked) == named.Length > 0)
            {
                throw new BadInput(new Fault(null, null, "CODE", "", "either codes to look for in the records, or --in with a posed case"));
            }

            if (asked.GetValue(threshold) is < 0m or > 1_000_000m)
            {
                throw new BadInput(new Fault(null, null, "--threshold", "", "kilograms from 0 to 1 000 000"));
            }

            T[] answers;
            if (posed.IsPosed(asked))
            {
                answers = [posed.Ask(asked, TraceCase.Read, posedAnswer)];
            }
            else
            {
                var (begin, end, moment) = (MomentOption.Read(asked, from), MomentOption.Read(asked, until), MomentOption.Read(asked, asOf));
                using var mill = where.Open(asked, clock);
                moment ??= mill.Settings.OpensAt;
                answers = mill.Ask(view =>
                {
                    var tracer = view.Tracer();
                    return named.Select(code => answer(tracer, new TraceQuestion(code) { From = begin, Until = end, AsOf = moment, Threshold = Mass.FromKilograms(asked.GetValue(threshold)) })).ToArray();
                });
            }

            if (answers.Select(nothing).OfType<string>().ToArray() is { Length: > 0 } reasons)
            {
                return voice.NoAnswer(reasons);
            }

            return posed.Json(asked) && answers.Length == 1 ? voice.Answer(true, answers[0], _ => { })
                : voice.Answer(posed.Json(asked), answers, all => Array.ForEach(all, a => say(a, voice)));
        });
        return command;
    }
}
