namespace Evengrist.Web.Sights.Trucks;

/// <summary>A slot to book, as it was typed.</summary>
public sealed class BookingForm
{
    /// <summary>Made with the form, so that the same form sent twice is one booking.</summary>
    public string? Key { get; set; }

    /// <summary>When the truck is expected, mill time.</summary>
    public string? At { get; set; }

    /// <summary>Code of the field or elevator.</summary>
    public string? Source { get; set; }

    /// <summary>Wheat class.</summary>
    public string? Class { get; set; }

    /// <summary>Tonnes expected.</summary>
    public string? Tonnes { get; set; }
}
