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
    /// <returns>The ticket's number, and the receipt.</returns>
    public static (string Ticket, Receipt Receipt) Record(this Mill mill, TicketEntry entry, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(entry);
        if (entry is not { Typed.IsWhole: true, At: { } at, Weighing: { } weighing, Source: { } source, Bin: { } bin })
        {
            throw new ArgumentException("The ticket is not whole.", nameof(entry));
        }

        var form = entry.Form;
        var truck = new ReceiveTruck(entry.Ticket == default ? "" : entry.Ticket.ToString(), source.Code, weighing.Gross, weighing.Tare, at)
        {
            Plate = form.Plate!.Trim(),
            Scale = (form.Scale ?? "").Trim(),
            Material = form.Class!.Trim(),
            Readings = entry.Sample.Readings,
            Contract = entry.Contract is { } contract ? (contract.Code, contract.Version) : null,
            Route = [.. entry.Way.Select(p => p.Code), bin.Code],
        };
        var station = (form.Station ?? "").Trim() is { Length: > 0 } named ? named : "web";
        var (ticket, receipt) = truck.Ticket.Length > 0 ? (truck.Ticket, truck.In(mill, by)) : truck.InNumbered(mill, by, station, form.Key!.Trim());
        if ((form.Note ?? "").Trim() is { Length: > 0 } note)
        {
            mill.Record([new Happen($"{ticket}/note", ticket, at, HappeningKind.Note, note)], by, "intake");
        }

        return (ticket, receipt);
    }

    /// <summary>A refusal in the words of the scale house.</summary>
    public static string Words(LedgerRefusal refusal, TicketEntry entry)
    {
        ArgumentNullException.ThrowIfNull(refusal);
        ArgumentNullException.ThrowIfNull(entry);
        return refusal.Rule is LedgerRule.KeyTaken or LedgerRule.CodeTaken
            ? $"{(entry.Ticket == default ? "This ticket" : $"Ticket {entry.Ticket}")} is recorded already, with other content. Take another number for a new truck; to change the one that is there, open it and put it right. ({refusal.Message})"
            : refusal.Message;
    }
}
