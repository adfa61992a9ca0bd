using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Samples;

/// <summary>Results of one test of a sample, as typed or read from a file: one value, or several made alike.</summary>
/// <param name="What">The property.</param>
/// <param name="Method">Code of the method; empty is a fault that is said.</param>
/// <param name="Instrument">Code of the instrument; empty where the method needs none.</param>
/// <param name="Values">As reported, digits kept.</param>
/// <param name="Unit">The unit.</param>
/// <param name="Basis">The moisture basis; none where it was not said.</param>
public sealed record ResultEntry(Property What, string Method, string Instrument, IReadOnlyList<decimal> Values, string Unit, Basis Basis);
