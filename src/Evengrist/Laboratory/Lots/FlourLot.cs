using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>The flour of one kind that was packed or loaded within one part of a milling day.</summary>
/// <param name="Code">What it is called: <c>WB-251007-2</c>; without the part where a day is one lot.</param>
/// <param name="Flour">The material of its packages.</param>
/// <param name="Day">The milling day.</param>
/// <param name="From">When its part of the day begins.</param>
/// <param name="Until">When it ends, left out.</param>
/// <param name="Packages">Its pallets and bulk loads, by the moment they were packed.</param>
public sealed record FlourLot(string Code, string Flour, LocalDate Day, Instant From, Instant Until, IReadOnlyList<LotPackage> Packages)
{
    /// <summary>What was packed.</summary>
    public Mass Mass { get; } = Packages.Aggregate(Mass.Zero, (sum, p) => sum + p.Mass);
}

/// <summary>One pallet or bulk load of a lot.</summary>
/// <param name="Place">The place.</param>
/// <param name="PackedAt">When it was packed or loaded: the end of the first movement into it.</param>
/// <param name="From">The place it was packed from.</param>
/// <param name="Mass">What went into it then.</param>
public sealed record LotPackage(Place Place, Instant PackedAt, PlaceId From, Mass Mass);
