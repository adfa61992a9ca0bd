using System.Globalization;
using Evengrist.Laboratory.Calibration;

namespace Evengrist.Plant.Spectra;

/// <summary>Spectra from JCAMP-DX text, one or several blocks, of one axis. Reflectance and transmittance become log 1/R.</summary>
internal static class Jcamp
{
    public static Parsed<SpectraTable> Read(string text)
    {
        List<Fault> faults = [];
        List<JcampBlock> blocks = [];
        List<JcampBlock> open = [];
        var (table, number) = (false, 0);
        foreach (var raw in text.AsSpan().EnumerateLines())
        {
            number++;
            var line = raw.ToString();
            if (line.TrimStart().StartsWith("##", StringComparison.Ordinal))
            {
                table = false;
                var (label, value) = Labelled(line);
                if (label == "TITLE")
                {
                    open.Add(new JcampBlock(number, value, faults));
                }
                else if (open.Count == 0)
                {
                    faults.Add(Fault.ToldOfLine(number, "A block begins with ##TITLE=."));
                    break;
                }
                else if (label == "END")
                {
                    Close();
                }
                else
                {
                    table = label == "XYDATA";
                    open[^1].Set(label, value, number);
                }
            }
            else if (table && line.Trim().Length > 0)
            {
                open[^1].Ordinates.Line(number, line);
            }

            if (faults.Count >= SpectraTable.MostFaults)
            {
                break;
            }
        }

        while (open.Count > 0)
        {
            Close();
        }

        return Of(blocks, faults);

        // A block that holds others has no table of its own.
        void Close()
        {
            if (open[^1].HasTable || open[^1].IsAlone)
            {
                blocks.Add(open[^1]);
            }

            open.RemoveAt(open.Count - 1);
        }
    }

    private static Parsed<SpectraTable> Of(List<JcampBlock> blocks, List<Fault> faults)
    {
        List<(SpectralAxis Axis, SpectrumRow Row)> read = [];
        foreach (var block in blocks.OrderBy(b => b.Line))
        {
            if (block.Spectrum(read.Count + 1) is { } spectrum)
            {
                read.Add(spectrum);
                if (read[0].Axis.Difference(spectrum.Axis) is { } differs)
                {
                    faults.Add(Fault.ToldOfLine(block.Line, $"The spectrum of {Fault.Show(spectrum.Row.Id)} is not on the axis of the first: {differs}."));
                }
            }
        }

        return faults.Count > 0 ? Parsing.Failed<SpectraTable>([.. faults.Take(SpectraTable.MostFaults)])
            : read.Count is 0 or > CalibrationSpec.MostSamples ? Parsing.Failed<SpectraTable>(Fault.OfFile($"{read.Count} blocks with a table", string.Create(CultureInfo.InvariantCulture, $"1 to {CalibrationSpec.MostSamples} blocks with ##XYDATA= (X++(Y..Y))")))
            : Parsing.Got(new SpectraTable(read[0].Axis, [.. read.Select(r => r.Row)]));
    }

    // Case, spaces, dashes, slashes and underlines do not count in labels; private ones begin with a dollar sign.
    private static (string Label, string Value) Labelled(string line)
    {
        var parts = line.TrimStart()[2..].Split('=', 2);
        var value = parts.Length > 1 ? parts[1].Split("$$", 2)[0].Trim() : "";
        return (string.Concat(parts[0].ToUpperInvariant().Where(c => c is not (' ' or '-' or '/' or '_'))), value);
    }
}
