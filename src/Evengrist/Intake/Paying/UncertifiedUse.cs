using NodaTime;

namespace Evengrist.Intake.Paying;

/// <summary>A scale or instrument that a load was weighed or read on while it had no certificate in force.</summary>
/// <param name="Instrument">The instrument as the reading names it.</param>
/// <param name="On">The day of the site's calendar it was used.</param>
public sealed record UncertifiedUse(string Instrument, LocalDate On);
