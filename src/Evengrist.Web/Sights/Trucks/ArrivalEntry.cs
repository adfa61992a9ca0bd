using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Records;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A truck at the gate as far as it can be read; whole, a ticket can be opened for it.</summary>
public sealed class ArrivalEntry
{
    private readonly ArrivalForm form;
    private ContractTerms? contract;
    private Place? source;
    private Instant? at;

    private ArrivalEntry(ArrivalForm form) => this.form = form;

    /// <summary>What was typed, as read.</summary>
    public Typed Typed { get; } = new();

    /// <summary>Reads a form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="book">The ledger, for codes.</param>
    /// <param name="terms">The contracts.</param>
    /// <param name="at">The moment typed; null where none was, or it is none.</param>
    /// <param name="now">The present.</param>
    public static ArrivalEntry Read(ArrivalForm form, Book book, Terms terms, Instant? at, Instant now)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(terms);
        var entry = new ArrivalEntry(form) { at = at };
        var typed = entry.Typed;
        typed.Text(form.Station, "the station");
        typed.Text(form.Key, "a key of your own for the ticket, so that a request sent again opens no second one");
        typed.Text(form.Plate, "the plate of the truck or trailer");
        typed.Text(form.Class, "the wheat class");
        if (typed.Text(form.At) is { Length: > 0 } moment && at is null)
        {
            typed.Fault("At", $"“{moment}” is no date and time. Write it like 2025-07-09T10:40, or leave it empty for now.");
        }
        else if (at > now)
        {
            typed.Fault("At", "That moment has not come yet. Leave it empty for now.");
        }

        if (typed.Text(form.Source, "the field or elevator") is { Length: > 0 } code && (entry.source = book.Find(code)) is not { Kind: PlaceKind.Field or PlaceKind.Elevator })
        {
            typed.Fault("Source", $"“{code}” is neither a field nor an elevator here. Choose one from the list; a new one is opened by the import page.");
        }

        if (typed.Text(form.Contract) is { Length: > 0 } named && (entry.contract = terms.Find(named)) is null)
        {
            typed.Fault("Contract", $"There is no contract “{named}” on the shelf. Choose one from the list, or none.");
        }

        return entry;
    }

    /// <summary>Opens the ticket.</summary>
    /// <returns>The ticket's number, and the receipt.</returns>
    /// <exception cref="ArgumentException">It is not whole.</exception>
    /// <exception cref="LedgerRefusal">A rule is broken; nothing was recorded.</exception>
    public (string Ticket, Receipt Receipt) Record(Mill mill, string by, Instant now)
    {
        if (!Typed.IsWhole)
        {
            throw new ArgumentException("The arrival is not whole.", nameof(by));
        }

        return new OpenTicket(form.Station!.Trim(), form.Key!.Trim(), source!.Code)
        {
            At = at, Plate = form.Plate!.Trim(), Material = form.Class!.Trim(), Haulier = (form.Haulier ?? "").Trim(), Booking = (form.Booking ?? "").Trim(),
            Contract = contract is null ? null : (contract.Code, contract.Version),
        }.In(mill, by, now);
    }
}
