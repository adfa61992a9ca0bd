using System.Text.Json;

namespace Evengrist.Plant.Cases;

/// <summary>Reads a posed case strictly: unknown members, members twice and values that cannot be are faults at their JSON path.</summary>
internal static class JsonCase
{
    private const int MostBytes = 1024 * 1024;
    private static readonly JsonDocumentOptions Strict = new() { MaxDepth = 16, AllowDuplicateProperties = false };

    public static Parsed<T> Read<T>(Stream stream, Func<JsonNode, List<Fault>, T?> read)
        where T : class
    {
        if (PosedBytes.Of(stream, MostBytes) is not { } bytes)
        {
            return Parsing.Failed<T>(Fault.OfFile("a larger case", "at most 1 MiB"));
        }

        try
        {
            using var document = JsonDocument.Parse(bytes, Strict);
            var faults = new List<Fault>();
            var value = read(new JsonNode(document.RootElement, "$", faults), faults);
            return faults.Count > 0 || value is null ? Parsing.Failed<T>(faults) : Parsing.Got(value);
        }
        catch (JsonException broken)
        {
            return Parsing.Failed<T>(new Fault((int?)(broken.LineNumber + 1), (int?)(broken.BytePositionInLine + 1), "", "something that is no JSON", "a JSON object, each member once, no comments, no comma at the end"));
        }
        catch (InvalidOperationException)
        {
            // Text with half a surrogate pair cannot be made a string.
            return Parsing.Failed<T>(Fault.OfFile("text that is not UTF-8", "a JSON object in UTF-8"));
        }
    }
}
