using System.Diagnostics;
using System.Globalization;
using Evengrist.Laboratory.Calibration;
using Evengrist.Numerics;
using Evengrist.Plant.Spectra;

namespace Evengrist.Bench.Laboratory;

/// <summary>Calibrations of spectra beside R's package pls, in one run: the same coefficients and errors, and the time of each.</summary>
internal static class PlsBench
{
    private static readonly (string File, string Property, int Factors)[] Open =
    [
        ("wheat-nir.csv", "protein", 12), ("wheat-nir.csv", "moisture", 12), ("gasoline-nir.csv", "octane", 10), ("yarn-nir.csv", "density", 10),
        ("biscuit-dough-nir.csv", "flour", 12), ("biscuit-dough-nir.csv", "water", 12), ("biscuit-dough-nir.csv", "fat", 12), ("biscuit-dough-nir.csv", "sucrose", 12), ("cereal-nir.csv", "Starch", 6),
    ];

    private static readonly (int Samples, int Channels)[] Made = [(100, 700), (300, 700), (300, 100)];

    public static int Run(string[] args)
    {
        var data = args is ["--data", var folder] ? folder : Environment.GetEnvironmentVariable("EVENGRIST_OPEN_DATA") is { } set ? Path.Combine(set, "lab-data") : "../shared/lab-data";
        if (!OtherPls.IsHere)
        {
            Console.Error.WriteLine("Rscript and its package pls are not here: apt-get install r-base-core r-cran-pls");
            return 2;
        }

        var sets = Open.Where(o => File.Exists(Path.Combine(data, o.File))).Select(o => Read(Path.Combine(data, o.File), o.Property, o.Factors)).Concat(Made.Select(m => Drawn(m.Samples, m.Channels))).ToArray();
        Console.WriteLine($"Processors {Environment.ProcessorCount}; load {(File.Exists("/proc/loadavg") ? File.ReadAllText("/proc/loadavg").Trim() : "unknown")}; {OtherPls.Version()}; each the least of several runs\n");
        Console.WriteLine("| spectra | samples × channels | factors | coefficients, worst of the largest | worst of its own | errors, worst | ten segments, ours ms | R ms | R/ours | one left out, ours ms | R ms | R/ours |\n|---|---|---:|---:|---:|---:|---:|---:|---:|---:|---:|---:|");
        var agree = true;
        foreach (var (name, spec) in sets)
        {
            var (tens, ones) = (Timed(spec with { Parts = 10 }), Timed(spec with { Parts = null }));
            var r = OtherPls.Run(spec);
            var (ofLargest, ofOwn) = Coefficients(spec, r.Coefficients);
            // With 0 factors R always leaves one out, whatever the segments are.
            var errors = new[] { (tens.Made.Curve.Select(e => e.Calibration), r.Calibration), (tens.Made.Curve.Skip(1).Select(e => e.CrossValidation), r.Tens.Skip(1)), (ones.Made.Curve.Select(e => e.CrossValidation), r.Ones) }
                .SelectMany(p => p.Item1.Zip(p.Item2, (ours, theirs) => Math.Abs(ours - theirs) / theirs)).Max();
            agree &= ofLargest <= 1e-6 && errors <= 1e-6;
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {name} | {spec.Samples.Count} × {spec.Axis.Count} | {spec.MostFactors} | {ofLargest:0.0e+0} | {ofOwn:0.0e+0} | {errors:0.0e+0} | {tens.Milliseconds:0.0} | {r.TensMilliseconds:0.0} | {r.TensMilliseconds / tens.Milliseconds:0.0} | {ones.Milliseconds:0.0} | {r.OnesMilliseconds:0.0} | {r.OnesMilliseconds / ones.Milliseconds:0.0} |"));
        }

        Console.WriteLine(agree ? "\nAll agree to 1e-6." : "\nFAIL: not all agree to 1e-6.");
        return agree ? 0 : 1;
    }

    private static (string Name, CalibrationSpec Spec) Read(string file, string property, int factors)
    {
        using var stream = File.OpenRead(file);
        var table = SpectraTable.Read(stream).Value;
        return ($"{Path.GetFileNameWithoutExtension(file)}, {property}", new(table.Axis, [.. table.Rows.Select((r, i) => new CalibrationSample($"{i}", r.Values, double.Parse(r.Columns[property].Text, CultureInfo.InvariantCulture)))], new(property, "%")) { MostFactors = factors });
    }

    // Eight bands of drawn strength, each spectrum with a little noise, the property a sum of three with noise of its own.
    private static (string Name, CalibrationSpec Spec) Drawn(int samples, int channels)
    {
        var draws = new SeededDraws(20261129, samples + channels);
        var all = new CalibrationSample[samples];
        for (var i = 0; i < samples; i++)
        {
            double[] strength = [.. Enumerable.Range(0, 8).Select(_ => 1 + (0.2 * draws.Normal()))];
            double[] spectrum = [.. Enumerable.Range(0, channels).Select(c => (1e-3 * draws.Normal()) + strength.Select((s, b) => s * Math.Exp(-Math.Pow((c - (channels * (b + 0.5) / 8)) / (channels / 9.0), 2))).Sum())];
            all[i] = new($"{i}", spectrum, 10 + strength[1] - (2 * strength[4]) + (0.5 * strength[6]) + (0.05 * draws.Normal()));
        }

        return ("drawn, eight bands", new(new([.. Enumerable.Range(0, channels).Select(c => 1100.0 + c)], "nm"), all, new("drawn", "%")) { MostFactors = 12 });
    }

    private static (CalibrationOutcome Made, double Milliseconds) Timed(CalibrationSpec spec)
    {
        var (made, least) = (CalibrationModel.Of(spec)!, double.MaxValue);
        var began = Stopwatch.GetTimestamp();
        for (var run = 0; run < 3 || (run < 30 && Stopwatch.GetElapsedTime(began).TotalSeconds < 2); run++)
        {
            var at = Stopwatch.GetTimestamp();
            made = CalibrationModel.Of(spec)!;
            least = Math.Min(least, Stopwatch.GetElapsedTime(at).TotalMilliseconds);
        }

        return (made, least);
    }

    private static (double OfLargest, double OfOwn) Coefficients(CalibrationSpec spec, double[][] theirs)
    {
        var factors = PlsFactors.Of([.. spec.Samples.Select(s => s.Spectrum.ToArray())], [.. spec.Samples.Select(s => s.Reference)], spec.MostFactors);
        var (ofLargest, ofOwn) = (0.0, 0.0);
        for (var a = 1; a <= spec.MostFactors; a++)
        {
            var (intercept, b) = factors.Regression(a);
            double[] ours = [intercept, .. b];
            var largest = theirs[a - 1].Skip(1).Max(Math.Abs);
            for (var c = 0; c < ours.Length; c++)
            {
                var off = Math.Abs(ours[c] - theirs[a - 1][c]);
                ofLargest = Math.Max(ofLargest, off / (c == 0 ? Math.Abs(theirs[a - 1][0]) : largest));
                ofOwn = Math.Max(ofOwn, off / Math.Abs(theirs[a - 1][c]));
            }
        }

        return (ofLargest, ofOwn);
    }
}
