namespace Evengrist.Plant.Epcis;

/// <summary>Holds a document against the ratified rules of EPCIS 2.0 and CBV 2.0 and against rules of meaning. Every fault is found, with its path, what was read and what was expected.</summary>
/// <remarks>Page: docs/model/epcis.md.</remarks>
public static class EpcisCheck
{
    /// <summary>The document, or every fault of it.</summary>
    /// <param name="stream">JSON; at most 32 MiB and 64 levels deep.</param>
    public static Parsed<EpcisDocument> Read(Stream stream) => EpcisBytes.Read(stream).Then(Read);

    private static Parsed<EpcisDocument> Read(Root root)
    {
        var faults = new Faults();
        var whole = new Part(root.Json, PathTo.Root);
        var parts = DocumentRules.Look(whole, faults);
        foreach (var part in parts)
        {
            Look(part, faults);
        }

        // Rules of meaning are asked only of what has the right form: they would repeat the same faults in other words.
        if (faults.Count == 0)
        {
            var asked = new Faults();
            MeaningRules.Look(parts, faults, asked);
            return faults.Count > 0 ? Parsing.Failed<EpcisDocument>(faults.All()) : Parsing.Got(EpcisDocument.Of(whole, parts, asked.All()));
        }

        return Parsing.Failed<EpcisDocument>(faults.All());
    }

    private static void Look(Part part, Faults faults)
    {
        if (part.Json.ValueKind != System.Text.Json.JsonValueKind.Object)
        {
            faults.Add(part.Wrong("an event"));
        }
        else if (part.Member("type") is { } type && !EventRules.ByType.ContainsKey(type.Text))
        {
            if (UriForm.IsUri(type.Text))
            {
                EventRules.Extended(part, faults);
            }
            else
            {
                faults.Add(type.Wrong($"{string.Join(", ", EventRules.ByType.Keys)}, or a type of your own as a URI"));
            }
        }
        else
        {
            (part.Member("type") is { } known ? EventRules.ByType[known.Text] : EventRules.Extended)(part, faults);
        }
    }
}
