using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>So much of a flour is to go on a load.</summary>
/// <param name="Flour">The flour, as the ledger names the material of its pallets and loads.</param>
/// <param name="Pallets">How many packages; 1 for a tanker.</param>
public sealed record PlannedFlour(string Flour, int Pallets)
{
    /// <summary>Most packages of one flour on one load [ours].</summary>
    public const int MostPallets = 200;
}

/// <summary>A package scanned onto a load.</summary>
/// <param name="Code">Code of the pallet or bulk load.</param>
/// <param name="At">When.</param>
/// <param name="By">The named person.</param>
public sealed record LoadedPackage(string Code, Instant At, string By)
{
    /// <summary>Why it was loaded although something spoke against it; empty where nothing did.</summary>
    public string Reason { get; init; } = "";

    /// <summary>What spoke against it, as it was said then.</summary>
    public IReadOnlyList<string> Said { get; init; } = [];
}

/// <summary>A package taken off again before the load left.</summary>
/// <param name="Code">Code of the package.</param>
/// <param name="LoadedAt">When it had been loaded.</param>
/// <param name="At">When it was taken off.</param>
/// <param name="By">The named person.</param>
/// <param name="Reason">Why.</param>
public sealed record UnloadedPackage(string Code, Instant LoadedAt, Instant At, string By, string Reason);

/// <summary>One point of the trailer's check list, answered.</summary>
/// <param name="Point">Code of the point.</param>
/// <param name="IsGood">Whether it was found good.</param>
/// <param name="At">When.</param>
/// <param name="By">The named person who looked.</param>
public sealed record TrailerAnswer(string Point, bool IsGood, Instant At, string By)
{
    /// <summary>What was seen, or how it was mended; demanded where it is not good, and where it is good after it was not.</summary>
    public string Note { get; init; } = "";
}

/// <summary>What a trailer or tanker carried before.</summary>
/// <param name="Previous">The last load, in words.</param>
/// <param name="At">When it was asked.</param>
/// <param name="By">The named person who asked.</param>
public sealed record CarriedBefore(string Previous, Instant At, string By)
{
    /// <summary>Number of the wash ticket; empty where it was not washed.</summary>
    public string WashTicket { get; init; } = "";

    /// <summary>Temperature inside, °C; null where it was not measured.</summary>
    public decimal? Celsius { get; init; }
}

/// <summary>Seals put on a trailer.</summary>
/// <param name="Numbers">Their numbers.</param>
/// <param name="At">When.</param>
/// <param name="By">The named person.</param>
public sealed record SealRecord(IReadOnlyList<string> Numbers, Instant At, string By);

/// <summary>How a load left.</summary>
/// <param name="At">When.</param>
/// <param name="By">The named person who sent it off.</param>
public sealed record Departure(Instant At, string By)
{
    /// <summary>The seals as read at departure; empty where none are demanded and none were.</summary>
    public IReadOnlyList<string> Seals { get; init; } = [];

    /// <summary>Why it left although something was asked; empty where nothing was.</summary>
    public string Reason { get; init; } = "";

    /// <summary>What was asked or cautioned, as it was said then.</summary>
    public IReadOnlyList<string> Said { get; init; } = [];
}

/// <summary>A trailer that was turned away; what stood on it is off again.</summary>
/// <param name="At">When.</param>
/// <param name="By">The named person.</param>
/// <param name="Reason">Why.</param>
public sealed record TurnedAway(Instant At, string By, string Reason);

/// <summary>A package that came back after its load had left.</summary>
/// <param name="Code">Its code.</param>
/// <param name="At">When it was back.</param>
/// <param name="By">The named person who took it in.</param>
/// <param name="Reason">Why it came back.</param>
public sealed record ReturnedPackage(string Code, Instant At, string By, string Reason);
