using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Methods;

/// <summary>A setting of an instrument for a property, from a day on. Kept so that one knows which was in force; readings stay as reported.</summary>
/// <param name="From">The first day it was in force.</param>
/// <param name="What">The property.</param>
/// <param name="Slope">What readings are multiplied by inside the instrument; above 0.</param>
/// <param name="Bias">What is then added, in the unit of the property.</param>
/// <param name="By">Who set it.</param>
/// <param name="Remark">Why, or which samples it rests on; may be empty.</param>
public sealed record InstrumentCalibration(LocalDate From, Property What, decimal Slope, decimal Bias, string By, string Remark = "");
