using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>The facts of a new ticket: a truck opened, loaded at its field, weighed, sampled, priced and tipped; all or nothing.</summary>
public static class TicketDrafts
{
    /// <summary>Where tickets typed on the page come from; keys are the ticket's own, so that the same ticket sent twice is one ticket.</summary>
    public const string FromPage = "intake page";

    /// <summary>The facts in the order of recording.</summary>
    /// <param name="entry">A whole entry.</param>
    public static IReadOnlyList<Draft> Of(TicketEntry entry)
    {
        ArgumentNullException.ThrowIfNull(entry);
        if (entry is not { Typed.IsWhole: true, At: { } at, Weighing: { } weighing, Source: { } source, Bin: { } bin })
        {
            throw new ArgumentException("The ticket is not whole.", nameof(entry));
        }

        var (form, ticket, net) = (entry.Form, entry.Ticket.ToString(), weighing.Net);
        var drafts = new List<Draft>
        {
            new OpenPlace($"ticket {ticket}", ticket, PlaceKind.Truck, form.Plate!.Trim(), form.Class!.Trim()) { Of = (form.Grower ?? "").Trim() },
            new Move($"ticket {ticket} loaded", source.Code, ticket, net, at),
            new Measure($"ticket {ticket} gross", ticket, at, Property.GrossWeight, weighing.Gross.Kilograms, "kg", default, "truck scale"),
            new Measure($"ticket {ticket} tare", ticket, at, Property.TareWeight, weighing.Tare.Kilograms, "kg", default, "truck scale"),
        };
        drafts.AddRange(entry.Findings.Select(f => new Measure(
            $"ticket {ticket} {f.What.Words()}", ticket, at, f.What, f.Value, f.Unit, f.Basis, Method(f.What, form.Method),
            IsNear(f.What) ? (form.Instrument ?? "").Trim() : "", f.What == Property.Protein ? entry.ProteinUncertainty : null)));
        if (entry.Contract is { } contract)
        {
            drafts.Add(new Happen($"ticket {ticket} contract", ticket, at, HappeningKind.Contract, contract.Title));
        }

        if ((form.Note ?? "").Trim() is { Length: > 0 } note)
        {
            drafts.Add(new Happen($"ticket {ticket} note", ticket, at, HappeningKind.Note, note));
        }

        string[] way = [ticket, .. entry.Way.Select(p => p.Code), bin.Code];
        drafts.AddRange(way.Zip(way.Skip(1), (here, next) => new Move($"ticket {ticket} {here} to {next}", here, next, net, at)));
        return drafts;
    }

    private static bool IsNear(Property what) => what is Property.Moisture or Property.Protein;

    private static string Method(Property what, string? chosen) => what switch
    {
        Property.Moisture or Property.Protein => (chosen ?? "").Trim() is { Length: > 0 } method ? method : "NIR",
        Property.Dockage => "dockage tester",
        Property.TestWeight => "test weight, fixed volume",
        Property.FallingNumber => "falling number",
        _ => "strip test",
    };
}
