namespace Evengrist.Web.Sights.Packing;

/// <summary>Texts that were scanned or typed.</summary>
public sealed class ScanForm
{
    /// <summary>One on each line.</summary>
    public string? Text { get; set; }

    /// <summary>Whether the scans of pallets are kept.</summary>
    public bool Keep { get; set; }
}
