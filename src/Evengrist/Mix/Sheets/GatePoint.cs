using Evengrist.Numerics;
using NodaTime;

namespace Evengrist.Mix.Sheets;

/// <summary>What a gate was set to on one sheet and what was weighed of it.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Sheet">Code of the sheet.</param>
/// <param name="At">When the sheet began.</param>
/// <param name="SetTonnesPerHour">Set, t/h.</param>
/// <param name="WeighedTonnesPerHour">Weighed, t/h, over the hours in which the gate gave wheat.</param>
/// <param name="SetUncertainty">One standard uncertainty with which a setting can be read off, t/h.</param>
/// <param name="WeighedUncertainty">One standard uncertainty of the weigher, t/h.</param>
public sealed record GatePoint(string Bin, string Sheet, Instant At, double SetTonnesPerHour, double WeighedTonnesPerHour, double SetUncertainty, double WeighedUncertainty)
{
    /// <summary>As a point of a line.</summary>
    public LinePoint Point => new(SetTonnesPerHour, WeighedTonnesPerHour, SetUncertainty, WeighedUncertainty);
}
