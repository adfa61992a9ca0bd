using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>Wheat that is expected, spread evenly over some days: a harvest, or lots bought already.</summary>
/// <param name="Code">Its code, of its own among bins, offers and districts.</param>
/// <param name="District">Where it grows; empty where that is not known.</param>
/// <param name="WheatClass">Its class.</param>
/// <param name="First">First day.</param>
/// <param name="Last">Last day.</param>
/// <param name="Tonnes">In all, t, 0 or more.</param>
/// <param name="TonnesSpread">Standard deviation of it, t.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">What it is expected to be.</param>
public sealed record ArrivalTerms(
    string Code, string District, string WheatClass, LocalDate First, LocalDate Last, double Tonnes, double TonnesSpread, double MoisturePercent, IReadOnlyList<QualityTerms> Quality);
