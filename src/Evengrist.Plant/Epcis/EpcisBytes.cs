using System.Text.Json;
using System.Text.Unicode;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Epcis;

/// <summary>From bytes to JSON that can be looked at safely: not too much, not too deep, in UTF-8, each member once.</summary>
internal static class EpcisBytes
{
    /// <summary>Bytes of a document, at most: about 50 000 events.</summary>
    public const int MostBytes = 32 * 1024 * 1024;

    /// <summary>Levels of objects and lists in one another, at most; a document of the standard has about eight.</summary>
    public const int MostDeep = 64;

    public static Parsed<Root> Read(Stream stream)
    {
        if (PosedBytes.Of(stream, MostBytes) is not { } bytes)
        {
            return Parsing.Failed<Root>(Fault.OfFile("more than 32 MiB", "a document of at most 32 MiB; send a longer one in parts, by span of time"));
        }

        if (!Utf8.IsValid(bytes.Span))
        {
            return Parsing.Failed<Root>(Fault.OfFile("bytes that are not UTF-8", "JSON in UTF-8"));
        }

        try
        {
            if (IsTooDeep(bytes.Span))
            {
                return Parsing.Failed<Root>(Fault.OfFile($"more than {MostDeep} levels of objects and lists in one another", $"at most {MostDeep} levels"));
            }

            var root = new Root(JsonElement.Parse(bytes.Span, new JsonDocumentOptions { MaxDepth = MostDeep }));
            var faults = new Faults();
            Once(new Part(root.Json, PathTo.Root), faults);
            return faults.Count > 0 ? Parsing.Failed<Root>(faults.All()) : Parsing.Got(root);
        }
        catch (JsonException broken)
        {
            return Parsing.Failed<Root>(new Fault((int?)(broken.LineNumber + 1), (int?)(broken.BytePositionInLine + 1), "", "something that is no JSON", "a JSON object, no comments, no comma at the end"));
        }
    }

    // The reader keeps its depth as bits, so that it can look at any depth without a stack of its own.
    private static bool IsTooDeep(ReadOnlySpan<byte> bytes)
    {
        var reader = new Utf8JsonReader(bytes, new JsonReaderOptions { MaxDepth = int.MaxValue });
        while (reader.Read())
        {
            if (reader.CurrentDepth >= MostDeep)
            {
                return true;
            }
        }

        return false;
    }

    private static void Once(Part part, Faults faults)
    {
        switch (part.Json.ValueKind)
        {
            case JsonValueKind.Object:
                var names = new HashSet<string>(StringComparer.Ordinal);
                foreach (var member in part.Json.EnumerateObject())
                {
                    var (name, path) = (Safe(() => member.Name), part.Path);
                    if (name is null)
                    {
                        faults.Add(Fault.Told(path.ToString(), "A member's name holds half of a character (an unpaired surrogate): it cannot be read."));
                        continue;
                    }

                    if (!names.Add(name))
                    {
                        faults.Add(Fault.AtPath(path.Member(name).ToString(), name, "each member once; it stands here twice"));
                    }

                    Once(new Part(member.Value, path.Member(name)), faults);
                }

                break;
            case JsonValueKind.Array:
                foreach (var item in part.Items())
                {
                    Once(item, faults);
                }

                break;
            case JsonValueKind.String when Safe(part.Json.GetString) is null:
                faults.Add(Fault.Told(part.Path.ToString(), "The text holds half of a character (an unpaired surrogate): it cannot be read."));
                break;
        }
    }

    private static string? Safe(Func<string?> text)
    {
        try
        {
            return text();
        }
        catch (InvalidOperationException)
        {
            return null;
        }
    }
}

/// <summary>The whole of what was read.</summary>
internal sealed record Root(JsonElement Json);
