namespace Evengrist.Web.Sights.Trucks;

/// <summary>One step of a ticket as it was typed: weighed in, sample read, sent somewhere, weighed out. Each step reads its own fields.</summary>
public sealed class StepForm : SampleForm
{
    /// <summary>Number of the newest fact that was seen on the ticket.</summary>
    public string? Seen { get; set; }

    /// <summary>The sender's own key of this step within the ticket; the same key again is the same step.</summary>
    public string? Key { get; set; }

    /// <summary>When, mill time; empty for now.</summary>
    public string? At { get; set; }

    /// <summary>Kilograms, weighed in.</summary>
    public string? Gross { get; set; }

    /// <summary>Kilograms, weighed out.</summary>
    public string? Tare { get; set; }

    /// <summary>Name of the scale, as its certificate is kept under; may be empty.</summary>
    public string? Scale { get; set; }

    /// <summary>Accept, discount, divert, set aside or turn away.</summary>
    public string? Decision { get; set; }

    /// <summary>Code of the bin.</summary>
    public string? Bin { get; set; }

    /// <summary>Codes of pit and leg, a stroke between them.</summary>
    public string? Way { get; set; }

    /// <summary>Why it was decided so.</summary>
    public string? Why { get; set; }
}
