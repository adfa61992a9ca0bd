namespace Evengrist.Web.Sights.Laboratory;

/// <summary>What was done about a signal, as typed.</summary>
public sealed class ChartActionForm
{
    /// <summary>When the reading that signals was taken, in ticks.</summary>
    public string? Point { get; set; }

    /// <summary>What was found and done.</summary>
    public string? Done { get; set; }
}
