namespace Evengrist.Web.Sights.Traces;

/// <summary>What a person filled in to start, close or abort a drill.</summary>
public sealed class DrillForm
{
    /// <summary>Code of the subject; empty to have one picked.</summary>
    public string? Code { get; set; }

    /// <summary>Seed for picking; empty for chance.</summary>
    public string? Seed { get; set; }

    /// <summary>Threshold, kilograms.</summary>
    public string? Kg { get; set; }

    /// <summary>The net that is the list.</summary>
    public string? Net { get; set; }

    /// <summary>What is said of it.</summary>
    public string? Note { get; set; }

    /// <summary>Why it is aborted.</summary>
    public string? Reason { get; set; }
}
