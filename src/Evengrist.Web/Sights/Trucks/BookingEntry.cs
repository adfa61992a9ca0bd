using Evengrist.Ledger;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A slot to book as far as it can be read.</summary>
public sealed class BookingEntry
{
    private const decimal MostTonnes = 120m;

    /// <summary>What was typed, as read.</summary>
    public Typed Typed { get; } = new();

    /// <summary>The booking, without a code yet; null where it is not whole.</summary>
    public Booking? Booking { get; private set; }

    /// <summary>Reads a form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="book">The ledger, for codes.</param>
    /// <param name="at">The moment typed; null where it is none.</param>
    public static BookingEntry Read(BookingForm form, Book book, Instant? at)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(book);
        var entry = new BookingEntry();
        var typed = entry.Typed;
        if (typed.Text(form.At, "date and time") is { Length: > 0 } moment && at is null)
        {
            typed.Fault("At", $"“{moment}” is no date and time. Write it like 2025-07-09T10:40.");
        }

        var code = typed.Text(form.Source, "the field or elevator");
        var source = code.Length == 0 ? null : book.Find(code);
        if (code.Length > 0 && source is not { Kind: PlaceKind.Field or PlaceKind.Elevator })
        {
            typed.Fault("Source", $"“{code}” is neither a field nor an elevator here. Choose one from the list; a new one is opened by the import page.");
        }

        var wheat = typed.Text(form.Class, "the wheat class");
        var tonnes = typed.Number("Tonnes", form.Tonnes, "t", "the tonnes");
        if (tonnes is <= 0m or > MostTonnes)
        {
            typed.Fault("Tonnes", $"{tonnes} t on one truck cannot be. Write tonnes above 0 and at most {MostTonnes}.");
        }

        if (typed.IsWhole)
        {
            entry.Booking = new Booking("", at!.Value, source!.Code, wheat, tonnes!.Value) { Key = (form.Key ?? "").Trim() };
        }

        return entry;
    }
}
