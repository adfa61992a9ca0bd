using System.Text;
using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Records;
using Evengrist.Records.Laboratory;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>A file of results as an instrument exported it, sent or pasted: looked at first, then recorded as a whole or not at all.</summary>
public sealed class LabFileForm
{
    /// <summary><c>look</c> or <c>keep</c>.</summary>
    public string? Do { get; set; }

    /// <summary>The text, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>Why what is asked about is taken.</summary>
    public string? Reason { get; set; }

    /// <summary>The rows read; null where the file cannot be read.</summary>
    public LabResultTable? Table { get; private set; }

    /// <summary>Every fault with its line, and its column where it has one.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What is asked about, each with its line.</summary>
    public IReadOnlyList<string> Questions { get; private set; } = [];

    /// <summary>Reads the file and looks whether it can be taken; records it where asked to.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">Who records it; null where nobody is named.</param>
    /// <param name="nameless">What is said then.</param>
    /// <returns>What became of it; null where it was not recorded.</returns>
    public Receipt? Act(Mill mill, string? by, string nameless)
    {
        ArgumentNullException.ThrowIfNull(mill);
        (Text, var fault) = PostedText.Of(File, Text, "a month");
        if (fault is not null)
        {
            Faults = [fault];
            return null;
        }

        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(Text));
        var read = LabResultTable.Read(stream, mill.Settings.Zone);
        if (!read.Ok)
        {
            Faults = [.. read.Faults.Select(f => $"{f}")];
            return null;
        }

        Table = read.Value;
        var rows = new ImportResults(Table.Rows, Reason ?? "");
        var objections = rows.Objections(mill);
        Faults = [.. objections.Where(o => !o.Objection.IsQuestion).Select(Line), .. Do == "keep" && string.IsNullOrWhiteSpace(by) ? [nameless] : Array.Empty<string>()];
        Questions = [.. objections.Where(o => o.Objection.IsQuestion).Select(Line)];
        if (Do != "keep" || Faults.Count > 0)
        {
            return null;
        }

        try
        {
            return rows.In(mill, by!).Receipt;
        }
        catch (LedgerRefusal refusal)
        {
            Faults = [refusal.Message];
            return null;
        }
    }

    private static string Line((int Line, Objection Objection) o) => $"Line {o.Line}: {o.Objection.Words}";
}
