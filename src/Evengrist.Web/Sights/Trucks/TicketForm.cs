namespace Evengrist.Web.Sights.Trucks;

/// <summary>A new ticket as it was typed; kept as text so that nothing typed is lost when it is refused.</summary>
public sealed class TicketForm
{
    /// <summary>What the buttons ask: <c>record</c>, or anything else to reckon only.</summary>
    public string? Act { get; set; }

    /// <summary>Ticket number.</summary>
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

    /// <summary>Per cent.</summary>
    public string? Moisture { get; set; }

    /// <summary>Per cent, on <see cref="ProteinBasis"/>.</summary>
    public string? Protein { get; set; }

    /// <summary>Basis of the protein; nothing is chosen beforehand.</summary>
    public string? ProteinBasis { get; set; }

    /// <summary>One standard uncertainty of the protein, same basis.</summary>
    public string? ProteinUncertainty { get; set; }

    /// <summary>Number as the instrument shows it.</summary>
    public string? TestWeight { get; set; }

    /// <summary>Unit, which names the convention.</summary>
    public string? TestWeightUnit { get; set; }

    /// <summary>Per cent.</summary>
    public string? Dockage { get; set; }

    /// <summary>Seconds.</summary>
    public string? FallingNumber { get; set; }

    /// <summary>mg/kg, on <see cref="DonBasis"/>.</summary>
    public string? Don { get; set; }

    /// <summary>Basis of the DON.</summary>
    public string? DonBasis { get; set; }

    /// <summary>How moisture and protein were read.</summary>
    public string? Method { get; set; }

    /// <summary>With which instrument.</summary>
    public string? Instrument { get; set; }

    /// <summary>Code of the bin.</summary>
    public string? Bin { get; set; }

    /// <summary>Codes of pit and leg, a stroke between them.</summary>
    public string? Way { get; set; }

    /// <summary>A note for those who come after.</summary>
    public string? Note { get; set; }
}
