namespace Evengrist.Web.Sights.Trucks;

/// <summary>What a probe sample showed, as it was typed; kept as text so that nothing typed is lost when it is refused.</summary>
public abstract class SampleForm
{
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

    /// <summary>With which dockage tester, as its certificate is kept under; may be empty.</summary>
    public string? DockageTester { get; set; }
}
