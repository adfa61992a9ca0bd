using System.Diagnostics;
using System.Globalization;
using System.Text.RegularExpressions;

namespace Evengrist.Bench.Season;

/// <summary>A solver of the system's own, run on an exported file.</summary>
internal sealed partial record OtherProgram(string Name, string Package, Func<string, int, string> Arguments, Regex Objective)
{
    public static readonly OtherProgram[] All =
    [
        new("glpsol", "glpk-utils", (f, s) => $"--freemps {f} --tmlim {s} --mipgap 0.001 -o {f}.glpsol", Glpk()),
        new("cbc", "coinor-cbc", (f, s) => $"{f} sec {s} ratio 0.001 solve", Cbc()),
        new("clp", "coinor-clp", (f, s) => $"{f} -seconds {s} -solve", Clp()),
        new("lp_solve", "lp-solve", (f, s) => $"-fmps {f} -timeout {s} -ga 0.001 -gr 0.001 -S3", LpSolve()),
    ];

    public bool IsHere => Environment.GetEnvironmentVariable("PATH")!.Split(':').Any(p => File.Exists(Path.Combine(p, Name)));

    /// <summary>Where the programs are missing and may be installed, installs them.</summary>
    public static void Install()
    {
        var missing = All.Where(p => !p.IsHere).Select(p => p.Package).ToArray();
        if (missing.Length > 0 && Environment.UserName == "root" && File.Exists("/usr/bin/apt-get"))
        {
            using var apt = Process.Start(new ProcessStartInfo("/usr/bin/apt-get", ["install", "-y", "-q", "--no-install-recommends", .. missing]) { RedirectStandardOutput = true, RedirectStandardError = true });
            apt?.StandardOutput.ReadToEnd();
            apt?.WaitForExit();
        }
    }

    /// <summary>Cost, wall and processor seconds; no cost where it found none.</summary>
    public (double? Cost, double Wall, double Cpu) Run(string file, int seconds)
    {
        var began = Stopwatch.GetTimestamp();
        using var run = Process.Start(new ProcessStartInfo("/bin/bash", ["-c", $"TIMEFORMAT='CPU %U'; time timeout -k 5 {2 * seconds + 20} {Name} {Arguments(file, seconds)} 2>&1 | grep -v '^C[0-9]' | tail -c 20000; [ -f {file}.glpsol ] && head -8 {file}.glpsol; rm -f {file}.glpsol"])
        {
            RedirectStandardOutput = true, RedirectStandardError = true,
        })!;
        var output = run.StandardOutput.ReadToEnd();
        var error = run.StandardError.ReadToEnd();
        run.WaitForExit();
        var wall = Stopwatch.GetElapsedTime(began).TotalSeconds;
        var found = output.Contains("UNDEFINED", StringComparison.Ordinal) ? null : Objective.Matches(output).LastOrDefault();
        double? cost = found is not null && double.TryParse(found.Groups[1].Value, NumberStyles.Float, CultureInfo.InvariantCulture, out var value) ? value : null;
        return (cost, wall, Processor().Match(error) is { Success: true } cpu ? double.Parse(cpu.Groups[1].Value, CultureInfo.InvariantCulture) : double.NaN);
    }

    [GeneratedRegex(@"Objective:\s+cost = ([-+0-9.e]+)")]
    private static partial Regex Glpk();

    [GeneratedRegex(@"(?:Objective value:|Optimal objective|Optimal - objective value)\s+([-+0-9.e]+)")]
    private static partial Regex Cbc();

    [GeneratedRegex(@"(?:Optimal objective|Optimal - objective value|objective value)\s+([-+0-9.e]+)")]
    private static partial Regex Clp();

    [GeneratedRegex(@"Value of objective function:\s+([-+0-9.e]+)")]
    private static partial Regex LpSolve();

    [GeneratedRegex(@"CPU ([0-9.]+)")]
    private static partial Regex Processor();
}
