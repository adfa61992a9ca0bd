using Evengrist.Ledger.Reckoned;

namespace Evengrist.Tracing.Bounds;

/// <summary>A movement under way, with what is known of what it has carried so far.</summary>
internal sealed class Carried : UnderWay
{
    /// <summary>Whether it sets its grams down whole, at its end: in a unit or a sink.</summary>
    public required bool IsWhole { get; init; }

    /// <summary>Whether what it carries is there at once, and not at its end.</summary>
    public bool Reaches => !IsWhole || At == Until;

    /// <summary>What has arrived so far, where it is set down whole.</summary>
    public Batch Arrived { get; set; }

    /// <summary>What lay in the store it leaves when it began, and what had come there by then; null where nothing of it was suspect.</summary>
    public (Held Store, Batch Lay, Batch Come)? Began { get; set; }
}
