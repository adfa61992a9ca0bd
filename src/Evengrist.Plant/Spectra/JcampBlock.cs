using System.Globalization;
using Evengrist.Laboratory.Calibration;

namespace Evengrist.Plant.Spectra;

/// <summary>One block of JCAMP-DX text.</summary>
/// <param name="Line">Where it begins.</param>
/// <param name="Title">Name of the sample.</param>
/// <param name="Faults">Where faults go.</param>
internal sealed record JcampBlock(int Line, string Title, List<Fault> Faults)
{
    private readonly Dictionary<string, (string Text, int Line)> labels = new(StringComparer.Ordinal);

    public SqueezedOrdinates Ordinates { get; } = new(Faults);

    public bool HasTable => labels.ContainsKey("XYDATA");

    /// <summary>Whether it says itself that it is a spectrum and not a cover for others.</summary>
    public bool IsAlone => labels.TryGetValue("DATATYPE", out var type) && !type.Text.Equals("LINK", StringComparison.OrdinalIgnoreCase);

    public void Set(string label, string value, int line)
    {
        if (label.Length > 0 && !labels.TryAdd(label, (value, line)) && !label.StartsWith('$') && label is "XYDATA" or "FIRSTX" or "LASTX" or "NPOINTS" or "XFACTOR" or "YFACTOR")
        {
            Faults.Add(Fault.ToldOfLine(line, $"##{label}= stands twice in the block that begins on line {Line}."));
        }
    }

    /// <summary>The spectrum; null with faults where it cannot be.</summary>
    public (SpectralAxis Axis, SpectrumRow Row)? Spectrum(int number)
    {
        var before = Faults.Count;
        if (!HasTable || !labels["XYDATA"].Text.Replace(" ", "", StringComparison.Ordinal).Equals("(X++(Y..Y))", StringComparison.OrdinalIgnoreCase))
        {
            Faults.Add(Fault.ToldOfLine(HasTable ? labels["XYDATA"].Line : Line, "Tables in the form ##XYDATA= (X++(Y..Y)) are read: save the spectrum in that form."));
            return null;
        }

        var (first, last, points) = (Number("FIRSTX"), Number("LASTX"), Number("NPOINTS"));
        var (xFactor, yFactor) = (Number("XFACTOR", 1), Number("YFACTOR", 1));
        if (first is null || last is null || points is null || xFactor is null || yFactor is null || Faults.Count > before)
        {
            return null;
        }

        var count = Ordinates.Values.Count;
        if (count != points || count < 2)
        {
            Faults.Add(Fault.ToldOfLine(labels["NPOINTS"].Line, string.Create(CultureInfo.InvariantCulture, $"##NPOINTS= {points} and the table has {count} points, of which 2 or more are needed: a line is damaged or missing.")));
            return null;
        }

        var step = (last.Value - first.Value) / (count - 1);
        CheckPlaces(first.Value, step, xFactor.Value);
        double[] values = [.. Ordinates.Values.Select(y => y * yFactor.Value)];
        if (labels.TryGetValue("FIRSTY", out var written) && Number("FIRSTY") is { } firstY && Math.Abs(values[0] - firstY) > (0.5 * Math.Abs(yFactor.Value)) + (1e-3 * Math.Abs(firstY)))
        {
            Faults.Add(Fault.ToldOfLine(written.Line, string.Create(CultureInfo.InvariantCulture, $"##FIRSTY= {firstY} and the table begins with {values[0]:G7}: the factor or the table is damaged.")));
        }

        var (unit, times) = Unit();
        var treated = Absorbances(values);
        return Faults.Count > before ? null : (
            new SpectralAxis([.. Enumerable.Range(0, count).Select(i => Math.Round((first.Value + (i * step)) * times, 6))], unit),
            new SpectrumRow(Title.Length > 0 ? Title : number.ToString(CultureInfo.InvariantCulture), Line, treated, labels.Where(l => l.Key.StartsWith('$')).ToDictionary(l => l.Key[1..].ToLowerInvariant(), l => (l.Value.Text, 0), StringComparer.OrdinalIgnoreCase)));
    }

    // Abscissas of lines are often rounded; a lost point moves the next one by a whole step.
    private void CheckPlaces(double first, double step, double factor)
    {
        foreach (var (line, at, ordinate) in Ordinates.Marks)
        {
            if (Math.Abs((at * factor) - (first + (ordinate * step))) > 0.9 * Math.Abs(step))
            {
                Faults.Add(Fault.ToldOfLine(line, string.Create(CultureInfo.InvariantCulture, $"The line begins at {at * factor:G8}, and {first + (ordinate * step):G8} comes next: a line is damaged or missing, or ##FIRSTX=, ##LASTX= or ##XFACTOR= is wrong.")));
                return;
            }
        }
    }

    private (string Unit, double Times) Unit() => (labels.TryGetValue("XUNITS", out var unit) ? unit.Text.ToUpperInvariant() : "") switch
    {
        "NANOMETERS" or "NM" => ("nm", 1),
        "MICROMETERS" or "UM" => ("nm", 1000),
        "1/CM" or "CM-1" => ("1/cm", 1),
        _ => ("channel", 1),
    };

    private double[] Absorbances(double[] values)
    {
        if (!labels.TryGetValue("YUNITS", out var unit) || unit.Text.ToUpperInvariant() is not ("REFLECTANCE" or "TRANSMITTANCE"))
        {
            return values;
        }

        if (values.Any(v => !(v > 0)))
        {
            Faults.Add(Fault.ToldOfLine(unit.Line, $"{unit.Text} of 0 or less has no logarithm: measure the sample again."));
            return values;
        }

        return [.. values.Select(v => -Math.Log10(v))];
    }

    private double? Number(string label, double? otherwise = null)
    {
        if (!labels.TryGetValue(label, out var written) && otherwise is not null)
        {
            return otherwise;
        }

        if (double.TryParse(written.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number) && double.IsFinite(number))
        {
            return number;
        }

        Faults.Add(new Fault(written.Line > 0 ? written.Line : Line, null, label, Fault.Show(written.Text ?? ""), $"a number; ##{label}= belongs to every table"));
        return null;
    }
}
