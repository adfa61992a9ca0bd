using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Methods;

/// <summary>An instrument: what it measures by, how it was set, and how it is checked.</summary>
/// <param name="Code">As in <see cref="Reading.Instrument"/>: <c>NIR-2</c>.</param>
/// <param name="Methods">Codes of the methods it serves.</param>
/// <param name="CheckEveryHours">A check is good for so long, h, above 0; null where none is laid down.</param>
/// <param name="Tolerances">What the check sample is read for, and how far it may be off.</param>
/// <param name="Calibrations">How it was set, the oldest first.</param>
/// <param name="Name">A longer name; may be empty.</param>
public sealed record LabInstrument(
    string Code, IReadOnlyList<string> Methods, double? CheckEveryHours, IReadOnlyList<CheckTolerance> Tolerances, IReadOnlyList<InstrumentCalibration> Calibrations, string Name = "")
{
    /// <summary>Longest time a check may be good for, h [ours].</summary>
    public const double MostHours = 24 * 366;

    /// <summary>Whether it serves a method, case not mattering.</summary>
    public bool Serves(string method) => Methods.Contains(method.Trim(), StringComparer.OrdinalIgnoreCase);

    /// <summary>The tolerance for a property; null where none is laid down.</summary>
    public CheckTolerance? ToleranceOf(Property what) => Tolerances.FirstOrDefault(t => t.What == what);

    /// <summary>The setting in force on a day; null where none is written down.</summary>
    public InstrumentCalibration? CalibrationOn(Property what, LocalDate day) => Calibrations.Where(c => c.What == what && c.From <= day).MaxBy(c => c.From);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Code) || Code.Trim() != Code || Code.Length > 60 ? ["An instrument has a code of 1 to 60 characters without space at either end."] : Array.Empty<string>(),
        .. Methods.Count == 0 || Methods.Any(string.IsNullOrWhiteSpace) ? [$"{Code}: name the methods it serves."] : Array.Empty<string>(),
        .. CheckEveryHours is null or (> 0 and <= MostHours) ? Array.Empty<string>() : [$"{Code}: a check is good for above 0 and up to {MostHours} hours."],
        .. (CheckEveryHours is null) != (Tolerances.Count == 0) ? [$"{Code}: checkEveryHours and tolerances go together; give both or neither."] : Array.Empty<string>(),
        .. Tolerances.Where(t => t.Within <= 0 || t.Mark == FigureMark.None || string.IsNullOrWhiteSpace(t.Source)).Select(t => $"{Code}, {t.What.Words()}: a tolerance is above 0, with mark and source."),
        .. Tolerances.GroupBy(t => t.What).Where(g => g.Count() > 1).Select(g => $"{Code}: {g.Key.Words()} has two tolerances; keep one."),
        .. Calibrations.Where(c => c.Slope <= 0 || string.IsNullOrWhiteSpace(c.By)).Select(c => $"{Code}, {c.What.Words()} from {c.From.ToString("uuuu-MM-dd", null)}: a slope is above 0, and somebody set it."),
        .. Calibrations.GroupBy(c => (c.What, c.From)).Where(g => g.Count() > 1).Select(g => $"{Code}: two settings of {g.Key.What.Words()} begin on one day; keep one."),
    ];
}
