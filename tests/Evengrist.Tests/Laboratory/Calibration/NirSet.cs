using System.Globalization;
using Evengrist.Laboratory.Calibration;

namespace Evengrist.Tests.Laboratory.Calibration;

/// <summary>Open sets of near infrared spectra.</summary>
internal sealed record NirSet(SpectralAxis Axis, IReadOnlyList<IReadOnlyDictionary<string, string>> Lines, double[][] Spectra)
{
    private static readonly Dictionary<string, NirSet> Known = [];

    public static NirSet Wheat => Of("wheat-nir.csv");

    public static NirSet Of(string file)
    {
        lock (Known)
        {
            if (!Known.TryGetValue(file, out var set))
            {
                var lines = OpenData.Csv(file);
                string[] channels = [.. lines[0].Keys.Where(k => k[0] is 'w' or 'X' && char.IsAsciiDigit(k[1]))];
                set = new(
                    new SpectralAxis([.. channels.Select(c => double.Parse(c[1..], CultureInfo.InvariantCulture))], channels[0][0] == 'w' ? "nm" : "channel"),
                    lines, [.. lines.Select(l => channels.Select(c => double.Parse(l[c], CultureInfo.InvariantCulture)).ToArray())]);
                Known[file] = set;
            }

            return set;
        }
    }

    public double[] Column(string name) => [.. Lines.Select(l => double.Parse(l[name], CultureInfo.InvariantCulture))];

    /// <summary>A calibration on some of the lines, validated on others.</summary>
    public CalibrationSpec Spec(string property, Func<int, bool> calibrates, Func<int, bool>? validates = null)
    {
        var y = Column(property);
        return new(Axis, [.. Enumerable.Range(0, y.Length).Where(i => calibrates(i) || validates?.Invoke(i) == true).Select(i => new CalibrationSample($"{i + 1}", Spectra[i], y[i], null, !calibrates(i)))], new(property, "%"));
    }

    public int Channel(double at) => Axis.Positions.Index().First(p => p.Item == at).Index;
}
