using System.Text;
using Evengrist.Milling.Sheet;
using Evengrist.Plant.Cases;

namespace Evengrist.Web.Sights.Flow;

/// <summary>A whole flow sheet sent as a file or as text, with the unit it is of and why.</summary>
public sealed class SheetFileForm
{
    /// <summary>Code of the unit; of a new one where the page shows none.</summary>
    public string? Unit { get; set; }

    /// <summary>The version it was made from; 0 for none.</summary>
    public int After { get; set; }

    /// <summary>Why it is made.</summary>
    public string? Reason { get; set; }

    /// <summary>The sheet as JSON, where no file was chosen.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary>Takes the file into the text, so that it can be shown and mended, and reads the sheet.</summary>
    /// <returns>The sheet, or every fault.</returns>
    public (FlowSheet? Sheet, IReadOnlyList<string> Faults) Read()
    {
        if (File is { Length: > FlowSheetCase.MostBytes })
        {
            return (null, [$"“{File.FileName}” is larger than 1 MiB: that is no flow sheet."]);
        }

        if (File is { Length: > 0 })
        {
            using var reader = new StreamReader(File.OpenReadStream());
            Text = reader.ReadToEnd();
        }

        if (string.IsNullOrWhiteSpace(Text))
        {
            return (null, ["Choose a file, or write the sheet as JSON below."]);
        }

        using var stream = new MemoryStream(Encoding.UTF8.GetBytes(Text));
        var read = FlowSheetCase.Read(stream);
        return read.Ok ? (read.Value, []) : (null, [.. read.Faults.Select(f => f.Expected)]);
    }
}
