using Evengrist.Mix.Sheets;
using NodaTime;

namespace Evengrist.Records.Mix;

/// <summary>What gates were set to and gave over the sheets that have run out: what they are calibrated from.</summary>
public static class GateHistory
{
    private const double LeastHours = 1;

    // A setting is read off to the step of the gates: evenly within ± half of it. Where nobody said the step, a twentieth of a point stands for it.
    private const double UnsaidStepPercent = 0.1;

    /// <summary>A point for each gate of each sheet that stood, has ended and gave wheat from that gate for an hour or more.</summary>
    /// <param name="draws">What was drawn of each sheet.</param>
    /// <param name="at">The moment looked at.</param>
    public static IReadOnlyList<GatePoint> Of(IEnumerable<SheetDraws> draws, Instant at)
    {
        ArgumentNullException.ThrowIfNull(draws);
        return [.. draws.Where(d => d.Kept.Sheet.Stands && d.Kept.Sheet.Until <= at).SelectMany(Points)];
    }

    private static IEnumerable<GatePoint> Points(SheetDraws drawn)
    {
        var sheet = drawn.Kept.Sheet;
        foreach (var gate in sheet.Gates)
        {
            if (drawn.Gates.FirstOrDefault(g => g.Bin.Equals(gate.Bin, StringComparison.OrdinalIgnoreCase)) is { } gave && gave.Hours >= LeastHours && sheet.SetRate(gate) > 0)
            {
                var rate = gave.Tonnes / gave.Hours;
                var step = (sheet.StepPercent ?? UnsaidStepPercent) / 100 * sheet.TonnesPerHour;
                yield return new GatePoint(gate.Bin, drawn.Kept.Code, sheet.From, sheet.SetRate(gate), rate, step / Math.Sqrt(12), Math.Max(1e-6, DrawnAgainstSheet.UsualWeigher * rate));
            }
        }
    }
}
