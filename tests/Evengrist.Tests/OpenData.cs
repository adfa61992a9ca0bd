using System.Globalization;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests;

/// <summary>Open data sets that lie beside the project and are not part of it: read there, never copied. Their README names origin and licence.</summary>
internal static class OpenData
{
    /// <summary>Why a test on open data is skipped; test.sh knows these words.</summary>
    public const string Missing = "The open data sets do not lie beside the project (../shared); EVENGRIST_OPEN_DATA may name their folder.";

    /// <summary>The folder that holds lab-data, epcis and gs1; null where there is none.</summary>
    public static string? Folder { get; } = new[] { Environment.GetEnvironmentVariable("EVENGRIST_OPEN_DATA"), Path.Combine(Repository.Root, "..", "shared") }
        .FirstOrDefault(f => !string.IsNullOrEmpty(f) && Directory.Exists(Path.Combine(f, "lab-data")));

    /// <summary>A file of a set; only where the folder is there.</summary>
    public static string At(params string[] path) => Path.Combine([Folder!, .. path]);

    /// <summary>The rows of a comma-separated set of lab-data, each by the names of its head; comment lines left out.</summary>
    public static IReadOnlyList<IReadOnlyDictionary<string, string>> Csv(string file)
    {
        var lines = Lines(file);
        var head = Cells(lines[0]);
        return [.. lines.Skip(1).Select(line => head.Zip(Cells(line)).ToDictionary(p => p.First, p => p.Second))];
    }

    /// <summary>One column of such a set as numbers.</summary>
    public static double[] Column(string file, string name) => [.. Csv(file).Select(row => double.Parse(row[name], CultureInfo.InvariantCulture))];

    private static string[] Lines(string file) => [.. System.IO.File.ReadLines(Path.Combine(Folder!, "lab-data", file)).Where(l => l.Length > 0 && l[0] != '#')];

    private static string[] Cells(string line) => [.. line.Split(',').Select(c => c.Trim('"'))];
}
