using System.Text;
using Evengrist.Milling.Learning;
using Evengrist.Plant.Cases;
using Evengrist.Records;
using Evengrist.Records.Milling;
using NodaTime;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A file of mill tests as it was sent or pasted: looked at first, then kept as a whole or not at all.</summary>
public sealed class MillTestFileForm
{
    private const int MostBytes = 2 * 1024 * 1024;

    /// <summary><c>look</c> or <c>keep</c>.</summary>
    public string? Do { get; set; }

    /// <summary>The text, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>The tests read, each with what keeps it from being kept; empty where the file cannot be read.</summary>
    public IReadOnlyList<(int Line, MillTestPaper Paper, IReadOnlyList<string> Faults)> Tests { get; private set; } = [];

    /// <summary>Every fault with its line.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>Takes the file into the text, so that it can be shown and mended, and reads it.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="sheet">Newest flow sheet of the unit.</param>
    /// <param name="by">Who would keep it.</param>
    /// <param name="now">The newest moment there is.</param>
    public void Read(Mill mill, KeptFlowSheet sheet, string by, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(sheet);
        if (File is { Length: > MostBytes })
        {
            Faults = [$"“{File.FileName}” is larger than 2 MiB: send the tests of a season at a time."];
            return;
        }

        if (File is { Length: > 0 })
        {
            using var reader = new StreamReader(File.OpenReadStream());
            Text = reader.ReadToEnd();
        }

        if (Text is { Length: > 3 } text && text.StartsWith("PK", StringComparison.Ordinal) && text.Contains('\u0003', StringComparison.Ordinal))
        {
            (Text, Faults) = ("", ["That is a workbook: save its sheet as CSV (UTF-8) and send that, or copy its cells into the text."]);
            return;
        }

        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(Text ?? ""));
        var read = MillTestTable.Read(stream, sheet.Unit, sheet.Version, mill.Settings.Zone);
        Tests = read.Ok ? [.. read.Value.Tests.Select(t => (t.Line, t.Paper, MillTests.Faults(mill, t.Paper, by, 0, now)))] : [];
        Faults = read.Ok ? [.. Tests.SelectMany(t => t.Faults.Select(f => $"From line {t.Line}: {f}"))] : [.. read.Faults.Select(f => $"{f}")];
    }
}
