using System.CommandLine;
using System.Globalization;
using Evengrist.Cli.Said;
using Evengrist.Plant;
using Evengrist.Plant.Answers;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Records;
using Evengrist.Records.Tracing;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Documents that were sent, and what would now be declared wrong to somebody.</summary>
internal static class EpcisSentVerb
{
    public static Command Of(Voice voice, IClock clock)
    {
        var to = new Argument<string?>("NAME") { Description = "to whom: what was told there and would now be declared wrong", Arity = ArgumentArity.ZeroOrOne };
        var json = new Option<bool>("--json") { Description = "answer in JSON" };
        var where = new MillOption();
        var command = new Command("sent", "Lists the documents that were sent; of one NAME, what a document sent now would declare wrong. Keeps nothing.") { to, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            if (asked.GetValue(to) is { } name)
            {
                return Wrong(voice, mill, asked.GetValue(json), Plant.Epcis.Sending.Earlier.Fault(name) is { } fault ? throw new BadInput(Fault.Told("NAME", fault)) : Earlier(mill, name), clock);
            }

            IReadOnlyList<EpcisSentAnswer> all = [.. Sendings.All(mill).Select(p => EpcisSentAnswer.Of(p.Json, p.Version, p.By, p.Recorded.ToDateTimeOffset())).OrderBy(s => s.Sent)];
            return voice.Answer(asked.GetValue(json), all, a =>
            {
                voice.Say(a.Count == 0 ? "Nothing was sent yet: epcis export … --sent-to NAME --by NAME sends a document." : $"{a.Count} documents were sent.");
                if (a.Count > 0)
                {
                    var table = new TextTable("sent", "to", "number", "what", "events", "new", "declared wrong", "by");
                    foreach (var s in a)
                    {
                        table.Add(s.Sent.UtcDateTime.ToString("yyyy-MM-dd HH:mm'Z'", CultureInfo.InvariantCulture), Fault.Show(s.To), Said(s.Number), Fault.Show(s.What), Said(s.Events), Said(s.New), Said(s.DeclaredWrong), Fault.Show(s.By));
                    }

                    table.To(voice);
                }
            });
        });
        return command;
    }

    public static Earlier Earlier(Mill mill, string to)
    {
        var name = Sendings.NameOf(mill, to);
        return Plant.Epcis.Sending.Earlier.Read(name, Sendings.To(mill, name).Select(p => p.Json), v => Sendings.EventsOf(mill, name, v));
    }

    private static int Wrong(Voice voice, Mill mill, bool json, Earlier earlier, IClock clock)
    {
        if (earlier.Outflow is not { } outflow)
        {
            return voice.NoAnswer($"Nothing was sent to {earlier.To} yet.");
        }

        var document = EpcisExportVerb.Documents(mill);
        var answer = mill.Ask(view => EpcisWouldDeclareAnswer.Of(earlier.To, new DocumentTo(document(view, outflow), earlier.To, earlier.Events, clock.GetCurrentInstant())));
        return voice.Answer(json, answer, a =>
        {
            voice.Say(a.Wrong.Count == 0 ? $"{a.To} was told {a.Standing} events; all of them hold." : $"{a.To} was told {a.Standing} events; {a.Wrong.Count} of them do not hold any more. The next document sent there declares them wrong:");
            EpcisRoom.Say(a.Wrong, voice);
        });
    }

    private static string Said(int number) => number.ToString(CultureInfo.InvariantCulture);
}
