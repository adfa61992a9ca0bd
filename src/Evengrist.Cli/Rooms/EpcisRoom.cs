using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Epcis;
using Evengrist.Records.Tracing;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Events of lots to and from others, by the open standard EPCIS 2.0.</summary>
internal static class EpcisRoom
{
    public static Command Of(Voice voice, IClock clock) => new("epcis", "Events of lots to and from customers and suppliers, by the open standard EPCIS 2.0.")
    {
        Check(voice), Import(voice, clock), Events(voice, clock), EpcisExportVerb.Of(voice, clock), EpcisSentVerb.Of(voice, clock), EpcisExportVerb.Keys(voice, clock),
    };

    private static Command Check(Voice voice)
    {
        var (file, json) = (FileOf(), Json());
        var command = new Command("check", "Whether a document can be taken: every fault with its place, and its events with their hash. Records nothing.") { file, json };
        command.SetAction(asked =>
        {
            var answer = EpcisAnswer.Of(Read(asked.GetRequiredValue(file)));
            return voice.Answer(asked.GetValue(json), answer, a =>
            {
                voice.Say($"{a.Events.Count} events, no fault found.");
                Say(a.Events, voice);
                voice.Say(a.Asked);
            });
        });
        return command;
    }

    private static Command Import(Voice voice, IClock clock)
    {
        var (file, json, where) = (FileOf(), Json(), new MillOption());
        var by = new Option<string?>("--by") { Description = "who takes it in", HelpName = "NAME" };
        var command = new Command("import", "Takes a customer's or supplier's document in: all of it, or nothing and every fault. The same event twice is kept once.") { file, by, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var name = asked.GetValue(by) is { } given && !string.IsNullOrWhiteSpace(given) ? given : throw new BadInput(new Fault(null, null, "--by", "", "who takes this in: give a name"));
            var document = Read(asked.GetRequiredValue(file));
            using var mill = where.Open(asked, clock);
            var taken = OthersEvents.Take(mill, document.Fingerprint(), document.Json.GetRawText(), document.Alone(), name);
            var answer = new EpcisTakenAnswer(taken.Added, taken.DeclaredWrong, taken.AlreadyKnown, [.. document.Asked.Select(a => a.ToString())], taken.NeverSeen);
            return voice.Answer(asked.GetValue(json), answer, a =>
            {
                voice.Say($"{a.Added} events taken in, {a.DeclaredWrong} known ones now declared wrong, {a.AlreadyKnown} known already.");
                if (a.NeverSeen > 0)
                {
                    voice.Say($"{a.NeverSeen} of the new ones are declared wrong though nobody had told them here: ask for the document they first stood in.");
                }

                voice.Say(a.Asked);
            });
        });
        return command;
    }

    private static Command Events(Voice voice, IClock clock)
    {
        var (json, where) = (Json(), new MillOption());
        var command = new Command("events", "Lists the events taken in from others.") { json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            IReadOnlyList<EpcisEventAnswer> all = [.. OthersEvents.All(mill).Select(p => EpcisEventAnswer.OfKept(p.Code, p.Json, p.By, p.Recorded.ToDateTimeOffset())).OrderBy(e => e.At).ThenBy(e => e.Hash, StringComparer.Ordinal)];
            return voice.Answer(asked.GetValue(json), all, a =>
            {
                voice.Say(a.Count == 0 ? "No events were taken in yet: epcis import FILE --by NAME takes some in." : $"{a.Count} events.");
                Say(a, voice);
            });
        });
        return command;
    }

    internal static void Say(IReadOnlyList<EpcisEventAnswer> events, Voice voice)
    {
        if (events.Count == 0)
        {
            return;
        }

        var table = new TextTable("at", "what", "step", "disposition", "of", "hash", "");
        foreach (var e in events)
        {
            table.Add(e.At.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss'Z'", System.Globalization.CultureInfo.InvariantCulture), Fault.Show(e.Type), Fault.Show(e.Step), Fault.Show(e.Disposition),
                e.Things.Count == 0 ? "" : Fault.Show(e.Things[0]) + (e.Things.Count > 1 ? $" and {e.Things.Count - 1} more" : ""), e.Hash["ni:///sha-256;".Length..][..12], e.DeclaredWrong ? "declared wrong" : "");
        }

        table.To(voice);
    }

    private static EpcisDocument Read(string path)
    {
        using var stream = Files.Open(path);
        var parsed = EpcisCheck.Read(stream);
        return parsed.Ok ? parsed.Value : throw new BadInput(parsed.Faults);
    }

    private static Argument<string> FileOf() => new("FILE") { Description = "the document, JSON of at most 32 MiB" };

    private static Option<bool> Json() => new("--json") { Description = "answer in JSON" };
}
