using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>A new ticket as far as it can be read, with what is wrong and what is still needed.</summary>
public sealed class TicketEntry
{
    private const decimal LightestTruck = 500m;
    private readonly TicketForm form;
    private readonly Book book;

    private TicketEntry(TicketForm form, Book book) => (this.form, this.book) = (form, book);

    /// <summary>What was typed, as read.</summary>
    public Typed Typed { get; } = new();

    /// <summary>Ticket number; <c>default</c> where it is to be given.</summary>
    public TicketNumber Ticket { get; private set; }

    /// <summary>When it came.</summary>
    public Instant? At { get; private set; }

    /// <summary>Full and empty.</summary>
    public Weighing? Weighing { get; private set; }

    /// <summary>What the probe showed.</summary>
    public SampleEntry Sample { get; private set; } = null!;

    /// <summary>What the probe showed, one a property.</summary>
    public IReadOnlyList<Finding> Findings => Sample.Findings;

    /// <summary>The contract; null where none is chosen.</summary>
    public ContractTerms? Contract { get; private set; }

    /// <summary>Field or elevator.</summary>
    public Place? Source { get; private set; }

    /// <summary>The bin.</summary>
    public Place? Bin { get; private set; }

    /// <summary>Pit and leg.</summary>
    public IReadOnlyList<Place> Way { get; private set; } = [];

    /// <summary>What comes of settling it; null as long as weights or contract are missing.</summary>
    public SettlementOutcome? Outcome { get; private set; }

    /// <summary>The form it was read from.</summary>
    public TicketForm Form => form;

    /// <summary>Reads a form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="book">The ledger, for codes.</param>
    /// <param name="terms">The contracts.</param>
    /// <param name="settings">Zone and milling day.</param>
    /// <param name="at">The moment typed; null where it is none.</param>
    /// <param name="now">The present, past which nothing has happened.</param>
    public static TicketEntry Read(TicketForm form, Book book, Terms terms, MillSettings settings, Instant? at, Instant now)
    {
        ArgumentNullException.ThrowIfNull(form);
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(settings);
        var entry = new TicketEntry(form, book) { At = at };
        entry.ReadHead(now, settings);
        entry.ReadWeights();
        entry.Sample = SampleEntry.Read(form, entry.Typed);
        entry.ReadPlaces(terms);
        if (entry is { Contract: { } contract, Weighing: { } weighing, At: { } came })
        {
            entry.Outcome = SettlementModel.Settle(new Delivery(weighing, MillingDay.Of(came, settings.Zone, settings.DayStart), entry.Findings), contract);
        }

        return entry;
    }

    private void ReadHead(Instant now, MillSettings settings)
    {
        if (Typed.Text(form.Ticket, string.IsNullOrWhiteSpace(form.Key) ? "a ticket number, or a key of your own for one that is given" : null) is { Length: > 0 } ticket)
        {
            Ticket = TicketNumber.TryParse(ticket, out var number) ? number : default;
            if (Ticket == default)
            {
                Typed.Fault("Ticket", $"“{ticket}” is no ticket number. Write it like 25-0709-061: year, month and day, running number.");
            }
        }

        if (Typed.Text(form.At, "date and time") is { Length: > 0 } moment && At is null)
        {
            Typed.Fault("At", $"“{moment}” is no date and time. Write it like 2025-07-09T10:40.");
        }
        else if (At > now)
        {
            Typed.Fault("At", $"{At.Value.InZone(settings.Zone).LocalDateTime:uuuu-MM-dd HH:mm} has not come yet; it is {now.InZone(settings.Zone).LocalDateTime:uuuu-MM-dd HH:mm} at the mill ({settings.ZoneId}). Set the date and time the truck was weighed.");
        }

        Typed.Text(form.Plate, "the plate of the truck or trailer");
        Typed.Text(form.Class, "the wheat class");
    }

    private void ReadWeights()
    {
        var gross = Mass("Gross", form.Gross, "gross");
        var tare = Mass("Tare", form.Tare, "tare");
        if (gross is not { } full || tare is not { } empty)
        {
            return;
        }

        if (full > Quantities.Mass.Zero && full.Kilograms < LightestTruck)
        {
            Typed.Fault("Gross", $"A truck of {full} cannot be. Were tonnes typed where kilograms are asked for?");
        }
        else if (Weighing.Fault(full, empty) is { } fault)
        {
            Typed.Fault(full < Quantities.Mass.Zero || tare <= gross ? "Gross" : "Tare", fault);
        }
        else if (full == empty)
        {
            Typed.Fault("Tare", $"Gross and tare are both {full}: then nothing was delivered. Weigh the empty truck again.");
        }
        else
        {
            Weighing = Weighing.Of(full, empty);
        }
    }

    private Mass? Mass(string field, string? text, string what)
    {
        if (Typed.Number(field, text, "kg", what) is not { } kilograms)
        {
            return null;
        }

        if (Math.Abs(kilograms) <= 10_000_000m)
        {
            return Quantities.Mass.FromKilograms(kilograms);
        }

        Typed.Fault(field, $"{what} of {kilograms} kg cannot be. Were grams typed where kilograms are asked for?");
        return null;
    }

    private void ReadPlaces(Terms terms)
    {
        Source = Place("Source", form.Source, "the field or elevator", k => k is PlaceKind.Field or PlaceKind.Elevator, "a field or an elevator");
        Bin = Place("Bin", form.Bin, "the bin", k => k is PlaceKind.Bin, "a wheat bin");
        var way = Typed.Text(form.Way);
        Way = Ways.Read(book, way) ?? [];
        if (way.Length > 0 && Way.Count == 0)
        {
            Typed.Fault("Way", $"“{way}” is no way: one of its codes is unknown. Choose pit and leg from the list.");
        }

        if (Bin is not null)
        {
            var stops = Way.Append(Bin).ToArray();
            for (var i = 0; i + 1 < stops.Length; i++)
            {
                if (!book.CanFlow(stops[i], stops[i + 1]))
                {
                    Typed.Fault("Way", $"Nothing can go from {stops[i].Code} to {stops[i + 1].Code}: the two are not connected. Choose another way or another bin.");
                }
            }
        }

        if (Typed.Text(form.Contract) is { Length: > 0 } named && (Contract = terms.Find(named)) is null)
        {
            Typed.Fault("Contract", $"There is no contract “{named}” on the shelf. Choose one from the list, or none.");
        }
    }

    private Place? Place(string field, string? text, string needed, Func<PlaceKind, bool> fits, string what)
    {
        var code = Typed.Text(text, needed);
        if (code.Length == 0)
        {
            return null;
        }

        var place = book.Find(code);
        if (place is not null && fits(place.Kind))
        {
            return place;
        }

        Typed.Fault(field, place is null
            ? $"There is no place with the code “{code}”. Choose {what} from the list; a new one is opened by the import page."
            : $"{place.Code} is {Article(place.Kind.Words())}, not {what}. Choose {what} from the list.");
        return null;
    }

    private static string Article(string words) => ("aeiou".Contains(words[0], StringComparison.Ordinal) ? "an " : "a ") + words;
}
