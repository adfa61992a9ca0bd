using Evengrist.Ledger;

namespace Evengrist.Bins;

/// <summary>How much of something is laid to one place: a truck it came on, a field it grew on.</summary>
/// <param name="Place">The truck, field, elevator, opening stock …</param>
/// <param name="Grams">How much of it; reckoned, at least 0.</param>
public sealed record PlacePart(PlaceId Place, double Grams);
