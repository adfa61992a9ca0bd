using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Plant.Epcis.Sending;
using Evengrist.Plant.Epcis.Writing;
using Evengrist.Records;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Packing;
using Evengrist.Records.Tracing;
using Evengrist.Web.Api;
using NodaTime;

namespace Evengrist.Web.Sights.Events;

/// <summary>Documents of events as files: to be looked at, for anybody or for somebody who was told before, and sent.</summary>
public static class EventFiles
{
    /// <summary>Media type of a document.</summary>
    public const string Media = "application/ld+json";

    /// <summary>Names of GS1 that the mill keeps.</summary>
    public static KeptTable<MillKeys> Keys { get; } = new(MillKeys.Kind, MillKeys.Code, MillKeys.None, MillKeys.TryRead, k => k.ToJson());

    /// <summary>A document to look at; nothing is kept of it.</summary>
    public static IResult Look(Mill mill, ExportAsk ask, Instant now) => Write(mill, ask, now, null);

    /// <summary>A document as it is sent: kept as sent, by whom.</summary>
    /// <exception cref="LedgerRefusal">Something else was sent to the same meanwhile.</exception>
    public static IResult Send(Mill mill, ExportAsk ask, Instant now, string by) => Write(mill, ask, now, by);

    /// <summary>What went to somebody so far.</summary>
    public static Earlier Earlier(Mill mill, string to)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var name = Sendings.NameOf(mill, to);
        return Plant.Epcis.Sending.Earlier.Read(name, Sendings.To(mill, name).Select(p => p.Json), v => Sendings.EventsOf(mill, name, v));
    }

    /// <summary>Asks something of a document for somebody, as it would be written now.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="earlier">What went to him.</param>
    /// <param name="outflow">How bins are taken to empty.</param>
    /// <param name="now">The present moment.</param>
    /// <param name="question">What is asked.</param>
    public static T Ask<T>(Mill mill, Earlier earlier, Outflow outflow, Instant now, Func<MillView, DocumentTo, T> question)
    {
        ArgumentNullException.ThrowIfNull(earlier);
        return Ask(mill, outflow, (view, document) => question(view, new DocumentTo(document, earlier.To, earlier.Events, now)));
    }

    private static T Ask<T>(Mill mill, Outflow outflow, Func<MillView, MillDocument, T> question)
    {
        var (settings, keys, corrections) = (mill.Settings, Keys.Newest(mill).Table with { Units = UnitNumbers.All(mill) }, Corrected.By(mill));
        var (products, lots) = (Products.Newest(mill).Select(k => k.Product).ToArray(), new FlourLots(KeepReleaseRules.Newest(mill).Rules, settings.Zone, settings.DayStart));
        return mill.Ask(view => question(view, new MillDocument(view.Book, view.Reckoning(outflow), settings.Name, settings.Zone, keys, corrections) { Products = products, FlourLots = lots }));
    }

    private static IResult Write(Mill mill, ExportAsk ask, Instant now, string? by)
    {
        var earlier = ask.To is { } to ? Earlier(mill, to) : null;
        if (earlier?.Against(ask.Outflow) is { } against)
        {
            return MixApi.Refuse([against], "Not written");
        }

        if (ask.Code is not null && mill.Ask(view => view.Book.Find(ask.Code) is { } p ? (Place: p, Can: MillDocument.CanFollow(p)) : default) is var found && !found.Can)
        {
            return MixApi.Refuse([found.Place is null ? $"There is no place with the code \"{ask.Code}\"." : $"{ask.Code} is no truck, pallet, load, tote, field, elevator or additive lot: give from and until."], "Not written");
        }

        // Written to a file first: the ledger is not kept waiting for a slow reader.
        var file = new FileStream(Path.GetTempFileName(), FileMode.Open, FileAccess.ReadWrite, FileShare.None, 64 * 1024, FileOptions.DeleteOnClose);
        try
        {
            if (earlier is null)
            {
                Ask(mill, ask.Outflow, (view, document) => ask.Code is null ? document.Write(file, ask.From!.Value, ask.Until!.Value) : document.Write(file, view.Book.Named(ask.Code)));
            }
            else
            {
                var (head, events) = Ask(mill, earlier, ask.Outflow, now, (view, document) => ask.Code is null ? document.Write(file, ask.From!.Value, ask.Until!.Value) : document.Write(file, view.Book.Named(ask.Code))!.Value);
                if (by is not null)
                {
                    Sendings.Keep(mill, earlier.To, earlier.Next, kept => (head with { Kept = kept }).ToJson(), events.ToJson(), by);
                }
            }
        }
        catch
        {
            file.Dispose();
            throw;
        }

        file.Position = 0;
        return Results.Stream(file, Media, "events.jsonld");
    }
}
