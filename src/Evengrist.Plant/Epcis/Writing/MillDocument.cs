using System.Globalization;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Packing.Products;
using NodaTime;

namespace Evengrist.Plant.Epcis.Writing;

/// <summary>Writes what the ledger knows as an EPCIS document. The same ledger gives the same bytes: the document is dated by the newest the ledger knows, not by the clock. Page: docs/model/epcis-export.md.</summary>
/// <param name="Book">The ledger.</param>
/// <param name="Reckoning">What lots were made of, under a hypothesis; level with the book.</param>
/// <param name="Mill">The mill's name.</param>
/// <param name="Zone">Zone of the site.</param>
/// <param name="Keys">Names of GS1, where the mill has them.</param>
/// <param name="Corrections">Facts that put earlier ones right.</param>
public sealed record MillDocument(Book Book, Reckoning Reckoning, string Mill, DateTimeZone Zone, MillKeys Keys, IReadOnlyList<Fact> Corrections)
{
    private const string Context = "https://ref.gs1.org/standards/epcis/2.0.0/epcis-context.jsonld";

    /// <summary>The mill's products: with them, and with how its lots are coded, bags on pallets are told by the lot printed on them.</summary>
    public IReadOnlyList<Product> Products { get; init; } = [];

    /// <summary>How the mill's lots of flour are coded; null where bags are not told.</summary>
    public FlourLots? FlourLots { get; init; }

    /// <summary>Whether the way of what was in a place can be told: of a unit and of a source.</summary>
    public static bool CanFollow(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return place.Kind.Role() is PlaceRole.Unit or PlaceRole.Source;
    }

    /// <summary>What happened in a span of time, its end left out.</summary>
    /// <returns>How many events were written.</returns>
    public int Write(Stream stream, Instant from, Instant until) => Write(stream, Scope.Between(Book, Reckoning.Parcels, from, until));

    /// <summary>What a truck, pallet, load or tote, a field, elevator or additive lot came from and what it has reached, parts below a millionth left out.</summary>
    /// <returns>How many events were written; null with nothing written where the place is neither a unit nor a source.</returns>
    public int? Write(Stream stream, Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return CanFollow(place) ? Write(stream, Scope.Of(Book, Reckoning.Parcels, place)) : null;
    }

    // Bytes written at once.
    internal const int Flush = 64 * 1024;

    private int Write(Stream stream, Scope scope)
    {
        var names = new MillNames(Keys, Mill);
        using var writer = Begin(stream, names, Dated(), null);
        var count = 0;
        foreach (var told in new ToldEvents(this, names).In(scope))
        {
            told.WriteTo(writer);
            count++;
            if (writer.BytesPending > Flush)
            {
                writer.Flush();
            }
        }

        End(writer);
        return count;
    }

    /// <summary>What stands before the events.</summary>
    internal static Utf8JsonWriter Begin(Stream stream, MillNames names, Instant dated, string? receiver)
    {
        var writer = new Utf8JsonWriter(stream, new JsonWriterOptions { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping });
        writer.WriteStartObject();
        writer.WriteStartArray("@context");
        writer.WriteStringValue(Context);
        writer.WriteStartObject();
        writer.WriteString("mill", MillNames.Terms);
        writer.WriteEndObject();
        writer.WriteEndArray();
        writer.WriteString("type", "EPCISDocument");
        writer.WriteString("schemaVersion", "2.0");
        writer.WriteString("creationDate", dated.InUtc().LocalDateTime.ToString("uuuu-MM-dd'T'HH:mm:ss.fff'Z'", CultureInfo.InvariantCulture));
        writer.WriteString("sender", names.Mill);
        if (receiver is not null)
        {
            writer.WriteString("receiver", receiver);
        }

        writer.WriteStartObject("epcisBody");
        writer.WriteStartArray("eventList");
        return writer;
    }

    /// <summary>What stands after them.</summary>
    internal static void End(Utf8JsonWriter writer)
    {
        writer.WriteEndArray();
        writer.WriteEndObject();
        writer.WriteEndObject();
        writer.Flush();
    }

    /// <summary>The newest the ledger knows.</summary>
    internal Instant Dated() => Corrections.Select(c => c.Attribution.Recorded).Append(Book.Newest ?? Instant.FromUnixTimeTicks(0)).Max();
}
