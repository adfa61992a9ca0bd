using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>A pallet or load of the ledger that a scan names, as it stands at a moment.</summary>
/// <param name="Place">The place.</param>
/// <param name="Lot">Code of its lot; empty where it has none yet.</param>
/// <param name="PackedAt">When it was packed; null where nothing went into it by then.</param>
/// <param name="Packed">What was packed, as it lies.</param>
/// <param name="Here">What of it is still here.</param>
/// <param name="Hold">The hold on it; null where there is none.</param>
/// <param name="GoneTo">Who got it; null where nobody did.</param>
/// <param name="GoneAt">When it left.</param>
/// <param name="Number">Its number (SSCC); null where none was given.</param>
public sealed record ScannedUnit(Place Place, string Lot, Instant? PackedAt, Mass Packed, Mass Here, Happening? Hold, Place? GoneTo, Instant? GoneAt, Sscc? Number);
