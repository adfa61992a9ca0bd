using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Methods;

/// <summary>A setting of an instrument for a property, from a day on. Readings stay as reported, wherever it is applied.</summary>
/// <param name="From">The first day it was in force.</param>
/// <param name="What">The property.</param>
/// <param name="Slope">What readings are multiplied by; above 0.</param>
/// <param name="Bias">What is then added, in the unit and on the basis of the readings.</param>
/// <param name="By">Who set it.</param>
/// <param name="Remark">Why, or which samples it rests on; may be empty.</param>
public sealed record InstrumentCalibration(LocalDate From, Property What, decimal Slope, decimal Bias, string By, string Remark = "")
{
    /// <summary>Where it is applied.</summary>
    public AppliedWhere Applied { get; init; } = AppliedWhere.InTheInstrument;

    /// <summary>A value as read, adjusted: slope·x + bias, not rounded.</summary>
    public decimal Adjust(decimal value) => (Slope * value) + Bias;
}
