using NodaTime;

namespace Evengrist.Packing.Codes;

/// <summary>What a scanned or typed text names, whatever form it came in: keys of GS1, or a code of the mill's own.</summary>
/// <param name="Text">The text as it came, without blanks round it.</param>
public sealed record ScannedKeys(string Text)
{
    /// <summary>Number of a pallet or load.</summary>
    public Sscc? Unit { get; init; }

    /// <summary>Number of the trade item: of the bag itself, or of what lies on the pallet.</summary>
    public Gtin? Item { get; init; }

    /// <summary>Code of the lot.</summary>
    public string? Lot { get; init; }

    /// <summary>The bag's own number.</summary>
    public string? Serial { get; init; }

    /// <summary>Best before.</summary>
    public LocalDate? BestBefore { get; init; }

    /// <summary>Bags on the pallet.</summary>
    public int? Count { get; init; }

    /// <summary>Net weight it says, kg as it lies.</summary>
    public decimal? NetKilograms { get; init; }

    /// <summary>The text where it is no key of GS1: a pallet's or lot's own code, if it is one.</summary>
    public string? Own { get; init; }

    /// <summary>Whether it names nothing the ledger could be asked for.</summary>
    public bool IsEmpty => Unit is null && Item is null && Lot is null && Own is null;
}
