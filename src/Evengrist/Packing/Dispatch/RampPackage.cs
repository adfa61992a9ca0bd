using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>A package as it is known at the ramp at one moment: what the ledger, the laboratory and the other loads say of it.</summary>
/// <param name="Code">What was scanned.</param>
public sealed record RampPackage(string Code)
{
    /// <summary>What sort of place it is; <see cref="PlaceKind.None"/> where the ledger knows none of the code.</summary>
    public PlaceKind Kind { get; init; }

    /// <summary>Its flour.</summary>
    public string Flour { get; init; } = "";

    /// <summary>Code of its product; empty where no product fits what is written on it.</summary>
    public string Product { get; init; } = "";

    /// <summary>What is written on it: <c>40 × 25 kg</c>.</summary>
    public string PackedAs { get; init; } = "";

    /// <summary>What lies on it, grams.</summary>
    public long Grams { get; init; }

    /// <summary>When it was packed; null where nothing ever came to it.</summary>
    public Instant? PackedAt { get; init; }

    /// <summary>The day up to which it is said to keep; null where no product says.</summary>
    public LocalDate? BestBefore { get; init; }

    /// <summary>Allergens in it beyond wheat.</summary>
    public IReadOnlyList<string> Allergens { get; init; } = [];

    /// <summary>Code of its lot; empty where it is in none.</summary>
    public string Lot { get; init; } = "";

    /// <summary>What was decided of the lot; empty where nothing was: <c>released</c>, <c>held</c>, <c>to rework</c>, <c>released as another flour</c>.</summary>
    public LotStand Stand { get; init; }

    /// <summary>The flour a downgraded lot goes as; empty otherwise.</summary>
    public string As { get; init; } = "";

    /// <summary>Why it is on hold; empty where it is not.</summary>
    public string Hold { get; init; } = "";

    /// <summary>Since when it is on hold.</summary>
    public Instant? HeldSince { get; init; }

    /// <summary>Who put it on hold; empty where that is not known.</summary>
    public string HeldBy { get; init; } = "";

    /// <summary>The consignee it went to; empty while it is here.</summary>
    public string GoneTo { get; init; } = "";

    /// <summary>When it went.</summary>
    public Instant? GoneAt { get; init; }

    /// <summary>What went, grams; 0 while it is here.</summary>
    public long GoneGrams { get; init; }

    /// <summary>When the ledger has it leaving later than the moment looked at; null where it stays.</summary>
    public Instant? LeavesLater { get; init; }

    /// <summary>Another open load it stands on; empty where it stands on none.</summary>
    public string OnLoad { get; init; } = "";

    /// <summary>When it was scanned onto that.</summary>
    public Instant? OnLoadSince { get; init; }

    /// <summary>Who scanned it onto that.</summary>
    public string OnLoadBy { get; init; } = "";

    /// <summary>What it holds, or held when it went, grams.</summary>
    public long Whole => GoneTo.Length > 0 ? GoneGrams : Grams;

    /// <summary>The flour it goes as.</summary>
    public string GoesAs => As.Length > 0 ? As : Flour;
}

/// <summary>What was decided of the lot a package is in.</summary>
public enum LotStand
{
    /// <summary>It is in no lot, as by-products are.</summary>
    NoLot,

    /// <summary>Nobody has decided.</summary>
    Undecided,

    /// <summary>Held.</summary>
    Held,

    /// <summary>To rework.</summary>
    Rework,

    /// <summary>Released.</summary>
    Released,

    /// <summary>Released as another flour.</summary>
    Downgraded,
}
