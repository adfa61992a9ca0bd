namespace Evengrist.Web.Sights.Traces;

/// <summary>What a person filled in to hold everything a trace has found.</summary>
public sealed class HoldForm
{
    /// <summary>Why; demanded.</summary>
    public string? Reason { get; set; }

    /// <summary>Whom consignees answer; may be empty.</summary>
    public string? Contact { get; set; }

    /// <summary>From when on, by the mill's clock.</summary>
    public string? At { get; set; }
}
