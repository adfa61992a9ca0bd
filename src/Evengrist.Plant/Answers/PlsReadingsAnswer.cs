using System.Globalization;
using Evengrist.Laboratory.Calibration;
using Evengrist.Plant.Cases;
using Evengrist.Plant.Spectra;

namespace Evengrist.Plant.Answers;

/// <summary>Readings of spectra by a calibration.</summary>
/// <param name="Property">What is read.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Basis">Its basis.</param>
/// <param name="Readings">Of each spectrum.</param>
/// <param name="Remarks">What else has to be known.</param>
public sealed record PlsReadingsAnswer(string Property, string Unit, string Basis, IReadOnlyList<PlsReadingAnswer> Readings, IReadOnlyList<string> Remarks)
{
    /// <summary>Reads every spectrum of a table.</summary>
    public static Parsed<PlsReadingsAnswer> Of(SpectralCalibration calibration, SpectraTable table) => PlsReadCase.OnAxis(calibration, table).Then(within =>
    {
        if (within.Rows.Where(r => r.Values.All(v => v == r.Values[0])).ToArray() is { Length: > 0 } flat)
        {
            return Parsing.Failed<PlsReadingsAnswer>([.. flat.Take(SpectraTable.MostFaults).Select(r => Fault.ToldOfLine(r.Line, $"The spectrum of {Fault.Show(r.Id)} is the same in all channels: nothing was measured."))]);
        }

        PlsReadingAnswer[] read = [.. within.Rows.Select(r => PlsReadingAnswer.Of(r.Id, calibration.Read(r.Values)))];
        var outside = read.Count(r => !r.MayDecide);
        return Parsing.Got(new PlsReadingsAnswer(calibration.Purpose.Property, calibration.Purpose.Unit, calibration.Purpose.Basis, read,
            outside == 0 ? [] : [string.Create(CultureInfo.InvariantCulture, $"{outside} of {read.Length} lie outside the calibration: shown, but they release and price nothing by themselves. Ask the reference method.")]));
    });

    /// <summary>Answers a posed case.</summary>
    public static Parsed<PlsReadingsAnswer> Of(PlsReadCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return SpectraTable.Read(posed.Spectra).Then(table => Of(posed.Calibration, table));
    }
}
