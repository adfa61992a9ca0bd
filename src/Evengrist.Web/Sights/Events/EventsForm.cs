using System.Text;
using Evengrist.Plant;
using Evengrist.Plant.Epcis;

namespace Evengrist.Web.Sights.Events;

/// <summary>A document of events as a file or pasted.</summary>
public sealed class EventsForm
{
    private const int MostShown = 200_000;

    /// <summary>What was pasted.</summary>
    public string? Text { get; set; }

    /// <summary>The file; it goes before the text.</summary>
    public IFormFile? File { get; set; }

    /// <summary><c>check</c> or <c>take</c>.</summary>
    public string? Act { get; set; }

    /// <summary>What was pasted, to stand there again; what is too long for a page does not.</summary>
    public string Shown => Text is { Length: <= MostShown } text ? text : "";

    /// <summary>The document, or every fault of it.</summary>
    public Parsed<EpcisDocument> Read()
    {
        if (File is { Length: > 0 })
        {
            using var stream = File.OpenReadStream();
            return EpcisCheck.Read(stream);
        }

        return string.IsNullOrWhiteSpace(Text) ? Parsing.Failed<EpcisDocument>(Fault.OfFile("nothing", "a file, or its text pasted")) : EpcisCheck.Read(new MemoryStream(Encoding.UTF8.GetBytes(Text), writable: false));
    }
}
