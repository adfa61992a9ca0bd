using System.Text;
using Evengrist.Plant;
using Evengrist.Plant.Epcis;
using Evengrist.Tests;

namespace Evengrist.Edge.Tests.Plant.Epcis;

/// <summary>The open EPCIS documents beside the project, and what their manifest says of them.</summary>
internal static class EpcisFiles
{
    private static readonly string[] Folders = ["own", "eventhash", "examples"];

    /// <summary>Each file with whether it is valid under the schema of January 2022 and under the ratified one.</summary>
    public static IReadOnlyList<(string File, bool Bundled, bool Ratified)> Manifest() =>
        [.. File.ReadLines(OpenData.At("epcis", "manifest.tsv")).Skip(1).Select(l => l.Split('\t')).Select(c => (c[0], c[1] == "valid", c[2] == "valid"))];

    public static string Text(string file) => File.ReadAllText(Folders.Select(f => OpenData.At("epcis", f, file)).First(File.Exists));

    public static Parsed<EpcisDocument> Read(string text) => EpcisCheck.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)));
}
