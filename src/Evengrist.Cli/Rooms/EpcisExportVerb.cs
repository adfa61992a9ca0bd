using System.CommandLine;
using Evengrist.Cli.Said;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Plant;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Packing;
using Evengrist.Records.Tracing;
using NodaTime;

namespace Evengrist.Cli.Rooms;

/// <summary>Writes what the ledger knows as events for others, and keeps the names they go by.</summary>
internal static class EpcisExportVerb
{
    private static readonly KeptTable<MillKeys> KeptKeys = new(MillKeys.Kind, MillKeys.Code, MillKeys.None, MillKeys.TryRead, k => k.ToJson());

    public static Command Of(Voice voice, IClock clock)
    {
        var code = new Argument<string?>("CODE") { Description = "a truck, pallet, load or tote, a field, elevator or additive lot: what it came from and what it has reached", Arity = ArgumentArity.ZeroOrOne };
        var (from, until) = (MomentOption.Of("--from", "what happened from then on"), MomentOption.Of("--until", "what happened before then"));
        var file = new Option<string?>("--out") { Description = "where the document is written", HelpName = "FILE" };
        var outflow = new Option<string?>("--outflow") { Description = "how bins are taken to empty: fifo (when left out), core or stirred", HelpName = "fifo|core|stirred" };
        outflow.AcceptOnlyFromAmong([.. OutflowWords.All.Select(o => o.Code())]);
        var json = new Option<bool>("--json") { Description = "answer in JSON" };
        var to = new Option<string?>("--sent-to") { Description = "keeps it as sent to that name; what went there before and is wrong now is declared wrong in it, once", HelpName = "NAME" };
        var by = new Option<string?>("--by") { Description = "who sends it", HelpName = "NAME" };
        var where = new MillOption();
        var command = new Command("export", "Writes what happened in a span of time, or the way of one lot, as an EPCIS 2.0 document. The same ledger gives the same bytes.") { code, from, until, file, outflow, to, by, json };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            var target = asked.GetValue(file) ?? throw new BadInput(new Fault(null, null, "--out", "", "a file to write the document to"));
            var (named, begin, end) = (asked.GetValue(code), MomentOption.Read(asked, from), MomentOption.Read(asked, until));
            if (named is null ? begin is null || end is null || end <= begin : begin is not null || end is not null)
            {
                throw new BadInput(new Fault(null, null, "--from", "", "either a CODE, or both --from and a later --until"));
            }

            var (receiver, sender) = (asked.GetValue(to), asked.GetValue(by));
            if (receiver is not null && (Earlier.Fault(receiver) is not null || string.IsNullOrWhiteSpace(sender)))
            {
                throw new BadInput(Earlier.Fault(receiver) is { } fault ? Fault.Told("--sent-to", fault) : new Fault(null, null, "--by", "", "who sends it: give a name"));
            }

            using var mill = where.Open(asked, clock);
            var earlier = receiver is null ? null : EpcisSentVerb.Earlier(mill, receiver);
            var hypothesis = OutflowWords.Read(asked.GetValue(outflow)) ?? Outflow.FirstInFirstOut;
            var documents = Documents(mill);
            if (earlier?.Against(hypothesis) is { } against)
            {
                return voice.NoAnswer(against);
            }

            (SentDocument Head, SentEvents Events)? sent = null;
            var count = mill.Ask(view =>
            {
                var place = named is null ? null : view.Book.Named(named);
                if (place is not null && !MillDocument.CanFollow(place))
                {
                    return (int?)null;
                }

                // Only now: a file that was there stays as it is where nothing can be written.
                using var stream = Files.Create(target);
                var document = documents(view, hypothesis);
                if (earlier is null)
                {
                    return place is null ? document.Write(stream, begin!.Value, end!.Value) : document.Write(stream, place);
                }

                var going = new DocumentTo(document, earlier.To, earlier.Events, clock.GetCurrentInstant());
                sent = place is null ? going.Write(stream, begin!.Value, end!.Value) : going.Write(stream, place);
                return sent?.Head.Events;
            });
            if (sent is var (head, events))
            {
                Sendings.Keep(mill, earlier!.To, earlier.Next, kept => (head with { Kept = kept }).ToJson(), events.ToJson(), sender!.Trim());
                return voice.Answer(asked.GetValue(json), new ExportAnswer(head.Events, target, head.Told, head.Declared),
                    a => voice.Say($"{a.Events} events are in {a.File}: {a.New} new to {head.To}, {a.DeclaredWrong} told before and declared wrong. It is kept as sent, number {earlier.Next} to {head.To}."));
            }

            return count is not { } written ? voice.NoAnswer($"{named} is no truck, pallet, load, tote, field, elevator or additive lot: say a span of time with --from and --until.")
                : voice.Answer(asked.GetValue(json), new ExportAnswer(written, target), a => voice.Say($"{a.Events} events are in {a.File}."));
        });
        return command;
    }

    public static Command Keys(Voice voice, IClock clock)
    {
        var file = new Option<string?>("--in") { Description = "the keys as JSON; without it they are shown", HelpName = "FILE" };
        var by = new Option<string?>("--by") { Description = "who keeps them", HelpName = "NAME" };
        var where = new MillOption();
        var command = new Command("keys", $"Shows or keeps the names of GS1 by which places, products, customers and units go in documents, such as {MillKeys.Example}. What is not named goes by the mill's own URI.") { file, by };
        where.AddTo(command);
        command.SetAction(asked =>
        {
            using var mill = where.Open(asked, clock);
            if (asked.GetValue(file) is not { } path)
            {
                voice.Say(KeptKeys.Newest(mill).Table.ToJson());
                return Exit.Done;
            }

            var name = asked.GetValue(by) is { } given && !string.IsNullOrWhiteSpace(given) ? given : throw new BadInput(new Fault(null, null, "--by", "", "who keeps this: give a name"));
            using var reader = new StreamReader(Files.Open(path));
            if (!MillKeys.TryRead(reader.ReadToEnd(), out var keys, out var faults))
            {
                throw new BadInput([.. faults.Select(f => Fault.Told("$", f))]);
            }

            voice.Say($"Kept as version {KeptKeys.Keep(mill, keys, name)}.");
            return Exit.Done;
        });
        return command;
    }

    // What stands beside the ledger is read first: the ledger is not kept waiting for it.
    internal static Func<MillView, Outflow, MillDocument> Documents(Mill mill)
    {
        var (settings, keys, corrections) = (mill.Settings, KeptKeys.Newest(mill).Table with { Units = UnitNumbers.All(mill) }, Corrected.By(mill));
        var (products, lots) = (Products.Newest(mill).Select(k => k.Product).ToArray(), new FlourLots(KeepReleaseRules.Newest(mill).Rules, settings.Zone, settings.DayStart));
        return (view, outflow) => new MillDocument(view.Book, view.Reckoning(outflow), settings.Name, settings.Zone, keys, corrections) { Products = products, FlourLots = lots };
    }

    private sealed record ExportAnswer(int Events, string File, int? New = null, int? DeclaredWrong = null);
}
