using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Intake;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A whole entry handed to the scale house's use case: a truck opened, loaded, weighed, sampled, priced and tipped; all or nothing.</summary>
public static class TicketRecording
{
    /// <summary>Records the truck; then its note, if there is one. The same ticket sent again is not recorded again.</summary>
    /// <exception cref="ArgumentException">The entry is not whole.</exception>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public static Receipt Record(this Mill mill, TicketEntry entry, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(entry);
        if (entry is not { Typed.IsWhole: true, At: { } at, Weighing: { } weighing, Source: { } source, Bin: { } bin })
        {
            throw new ArgumentException("The ticket is not whole.", nameof(entry));
        }

        var (form, ticket) = (entry.Form, entry.Ticket.ToString());
        var receipt = new ReceiveTruck(ticket, source.Code, weighing.Gross, weighing.Tare, at)
        {
            Plate = form.Plate!.Trim(),
            Material = form.Class!.Trim(),
            Readings = [.. entry.Findings.Select(f => Reading(f, entry))],
            Contract = entry.Contract is { } contract ? (contract.Code, contract.Version) : null,
            Route = [.. entry.Way.Select(p => p.Code), bin.Code],
        }.In(mill, by);
        if ((form.Note ?? "").Trim() is { Length: > 0 } note)
        {
            mill.Record([new Happen($"{ticket}/note", ticket, at, HappeningKind.Note, note)], by, "intake");
        }

        return receipt;
    }

    /// <summary>A refusal in the words of the scale house.</summary>
    public static string Words(LedgerRefusal refusal, TicketEntry entry)
    {
        ArgumentNullException.ThrowIfNull(refusal);
        ArgumentNullException.ThrowIfNull(entry);
        return refusal.Rule is LedgerRule.KeyTaken or LedgerRule.CodeTaken
            ? $"Ticket {entry.Ticket} is recorded already, with other content. Take another number for a new truck; to change the one that is there, open it and put it right. ({refusal.Message})"
            : refusal.Message;
    }

    private static TruckReading Reading(Finding found, TicketEntry entry)
    {
        var near = found.What is Property.Moisture or Property.Protein;
        return new TruckReading(found.What, found.Value, found.Unit, found.Basis, Method(found.What, entry.Form.Method),
            near ? (entry.Form.Instrument ?? "").Trim() : "", found.What == Property.Protein ? entry.ProteinUncertainty : null);
    }

    private static string Method(Property what, string? chosen) => what switch
    {
        Property.Moisture or Property.Protein => (chosen ?? "").Trim() is { Length: > 0 } method ? method : "NIR",
        Property.Dockage => "dockage tester",
        Property.TestWeight => "test weight, fixed volume",
        Property.FallingNumber => "falling number",
        _ => "strip test",
    };
}
