namespace Evengrist.Web.Sights.Trucks;

/// <summary>A new ticket as it was typed; kept as text so that nothing typed is lost when it is refused.</summary>
public sealed class TicketForm : SampleForm
{
    /// <summary>What the buttons ask: <c>record</c>, or anything else to reckon only.</summary>
    public string? Act { get; set; }

    /// <summary>Made with the form, so that the same form sent twice is one ticket where the number is given by us; unique within <see cref="Station"/>.</summary>
    public string? Key { get; set; }

    /// <summary>Where the ticket is written.</summary>
    public string? Station { get; set; }

    /// <summary>Ticket number; empty where the next of the milling day is to be given.</summary>
    public string? Ticket { get; set; }

    /// <summary>When weighed full, mill time.</summary>
    public string? At { get; set; }

    /// <summary>Plate of the truck or trailer.</summary>
    public string? Plate { get; set; }

    /// <summary>Code of the field or elevator.</summary>
    public string? Source { get; set; }

    /// <summary>Wheat class.</summary>
    public string? Class { get; set; }

    /// <summary>Title of the contract; empty for none.</summary>
    public string? Contract { get; set; }

    /// <summary>Kilograms.</summary>
    public string? Gross { get; set; }

    /// <summary>Kilograms.</summary>
    public string? Tare { get; set; }

    /// <summary>Name of the scale, as its certificate is kept under; may be empty.</summary>
    public string? Scale { get; set; }

    /// <summary>Code of the bin.</summary>
    public string? Bin { get; set; }

    /// <summary>Codes of pit and leg, a stroke between them.</summary>
    public string? Way { get; set; }

    /// <summary>A note for those who come after.</summary>
    public string? Note { get; set; }
}
