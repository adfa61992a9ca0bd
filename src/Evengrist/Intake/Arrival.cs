using System.Text.Json;
using Evengrist.Ledger;

namespace Evengrist.Intake;

/// <summary>What is known of a truck as it stands at the gate; kept as particulars of its arrival.</summary>
/// <param name="Station">Where the ticket was opened.</param>
/// <param name="Key">That station's own key of the ticket, so that a request sent again opens no second one.</param>
/// <param name="From">Code of the field or elevator it says it comes from; the load is booked from there once it is weighed empty.</param>
/// <param name="Booking">Code of the booked slot; empty where it came unbooked.</param>
public sealed record Arrival(string Station, string Key, string From, string Booking = "")
{
    /// <summary>The particulars as JSON: <c>{"station":"scale 1","key":"k17","from":"DS-2","booking":""}</c>.</summary>
    public string ToJson() => JsonSerializer.Serialize(new Dictionary<string, string> { ["station"] = Station, ["key"] = Key, ["from"] = From, ["booking"] = Booking });

    /// <summary>The arrival that a happening tells; null where it tells none.</summary>
    public static Arrival? Read(Happening happening)
    {
        ArgumentNullException.ThrowIfNull(happening);
        return happening.Kind == HappeningKind.Arrived && ParticularsJson.Read(happening) is { } said
            ? new Arrival(ParticularsJson.Text(said, "station"), ParticularsJson.Text(said, "key"), ParticularsJson.Text(said, "from"), ParticularsJson.Text(said, "booking"))
            : null;
    }

    /// <summary>The arrival of a truck; null where none was recorded with particulars.</summary>
    public static Arrival? Of(Book book, Place truck)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        return book.HappeningsOn(truck.Id).FirstOrDefault(h => h.Kind == HappeningKind.Arrived) is { } arrived ? Read(arrived) : null;
    }
}
