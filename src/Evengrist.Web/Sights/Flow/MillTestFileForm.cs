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
        (Text, var fault) = PostedText.Of(File, Text, "the tests of a season");
        if (fault is not null)
        {
            Faults = [fault];
            return;
        }

        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(Text));
        var read = MillTestTable.Read(stream, sheet.Unit, sheet.Version, mill.Settings.Zone);
        Tests = read.Ok ? [.. read.Value.Tests.Select(t => (t.Line, t.Paper, MillTests.Faults(mill, t.Paper, by, 0, now)))] : [];
        Faults = read.Ok ? [.. Tests.SelectMany(t => t.Faults.Select(f => $"From line {t.Line}: {f}"))] : [.. read.Faults.Select(f => $"{f}")];
    }
}
