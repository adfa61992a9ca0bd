using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>Another demand for some time.</summary>
/// <param name="From">First day.</param>
/// <param name="To">Last day.</param>
/// <param name="TonnesPerWeek">Flour wanted in a week, t, 0 or more.</param>
public sealed record DemandTerms(LocalDate From, LocalDate To, double TonnesPerWeek);
