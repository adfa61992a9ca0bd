using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact: something was measured on what was in, or went through, a place at a time. Kept as reported.</summary>
/// <param name="Id">The number of the fact.</param>
/// <param name="On">The place whose content was sampled: a truck, a bin, a mill unit, a pallet.</param>
/// <param name="At">When the sample was taken.</param>
/// <param name="What">The property.</param>
/// <param name="Value">The value as reported, digits kept, in <paramref name="Unit"/>.</param>
/// <param name="Unit">The unit with its convention, from <c>Units</c>: <c>%</c>, <c>s</c>, <c>kg/hL</c>, <c>lb/bu</c>, <c>g/0.5L</c>, <c>mg/kg</c>, <c>°C</c>, <c>kg</c>.</param>
/// <param name="Basis">The moisture basis; stated for every share of solids, default otherwise.</param>
/// <param name="Method">How: <c>NIR</c>, <c>oven 130 °C</c>, <c>combustion</c> …; never empty.</param>
/// <param name="Instrument">Which instrument; may be empty when the method needs none.</param>
/// <param name="StandardUncertainty">One standard uncertainty in the unit of the value, sampling included where known; null when not known.</param>
public sealed record Reading(
    FactId Id, PlaceId On, Instant At, Property What, decimal Value, string Unit, Basis Basis,
    string Method, string Instrument = "", decimal? StandardUncertainty = null);
