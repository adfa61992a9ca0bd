namespace Evengrist.Web.Sights.Trucks;

/// <summary>A truck at the gate as it was typed.</summary>
public sealed class ArrivalForm
{
    /// <summary>Where the ticket is opened.</summary>
    public string? Station { get; set; }

    /// <summary>That station's own key of the ticket: the same key on the same day is the same ticket.</summary>
    public string? Key { get; set; }

    /// <summary>When it came, mill time; empty for now.</summary>
    public string? At { get; set; }

    /// <summary>Plate of the truck or trailer.</summary>
    public string? Plate { get; set; }

    /// <summary>Code of the field or elevator.</summary>
    public string? Source { get; set; }

    /// <summary>Wheat class.</summary>
    public string? Class { get; set; }

    /// <summary>Grower or haulier, in words; may be empty.</summary>
    public string? Haulier { get; set; }

    /// <summary>Title of the contract; empty for none.</summary>
    public string? Contract { get; set; }

    /// <summary>Code of the booked slot; empty where it came unbooked.</summary>
    public string? Booking { get; set; }

    /// <summary>Said to be another truck although one of the same plate stands in the yard.</summary>
    public bool Another { get; set; }
}
