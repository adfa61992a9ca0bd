using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization.Metadata;
using Evengrist.Quantities;

namespace Evengrist.Milling.Sheet;

/// <summary>A flow sheet as JSON text and back, without loss: what is kept as a paper and what a person edits as a file.</summary>
/// <remarks>Camel case; kinds, sides and dispositions by name. Unknown and missing fields are faults. A share of 1, a detacher that is not there and air that lifts nothing may be left out.</remarks>
public static class FlowSheetJson
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "flow-sheet";

    private static readonly JsonSerializerOptions Options = Made();

    /// <summary>The sheet as JSON: a passage's rolls and each of its cloths on a line of their own.</summary>
    public static string Write(FlowSheet sheet) => WideJson.Write(JsonSerializer.SerializeToNode(sheet, Options) ?? throw new ArgumentNullException(nameof(sheet)));

    /// <summary>Reads a sheet and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="sheet">The sheet; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence that says where; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out FlowSheet? sheet, out IReadOnlyList<string> faults)
    {
        var read = StrictJson.TryRead(json, Options, Faults, out sheet, out faults);
        faults = [.. faults.Select(f => PassagePlace.Named(f, json))];
        return read;
    }

    /// <summary>The sheet and why it was kept, as JSON.</summary>
    public static string Write(FlowSheetPaper paper) => WideJson.Write(JsonSerializer.SerializeToNode(paper, Options) ?? throw new ArgumentNullException(nameof(paper)));

    /// <summary>Reads a sheet with its reason and checks both.</summary>
    /// <param name="json">The text.</param>
    /// <param name="paper">The sheet and its reason; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence that says where; empty where there is none.</param>
    public static bool TryReadPaper(string json, [NotNullWhen(true)] out FlowSheetPaper? paper, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, p => Nulls(p?.Sheet) is { Count: > 0 } nulls ? nulls : p!.Faults(), out paper, out faults);

    private static IReadOnlyList<string> Faults(FlowSheet? read) => Nulls(read) is { Count: > 0 } nulls ? nulls : read!.Faults();

    private static IReadOnlyList<string> Nulls(FlowSheet? read)
    {
        if (read is null || read.Passages.Any(p => p is null) || read.Products.Any(p => p is null))
        {
            return ["A flow sheet is an object with a name, the code of its first break, a list of passages and a list of products; read null."];
        }

        return [.. read.Passages.Where(p => p.Cloths.Any(c => c is null || c.To.Any(s => s is null)) || p.Lifted.Concat(p.Rest).Any(s => s is null)).Select(p => $"{p.Code}: a cloth or a spout is null; give it or take it out.")];
    }

    private static JsonSerializerOptions Made()
    {
        var options = StrictJson.Options();
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        options.TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { AsAMillerReads } };
        return options;
    }

    // What most passages do not have would hide what they have; what grinds stands before what sifts, as stock meets them.
    private static void AsAMillerReads(JsonTypeInfo info)
    {
        foreach (var reckoned in info.Properties.Where(p => p.Set is null).ToArray())
        {
            info.Properties.Remove(reckoned);
        }

        foreach (var property in info.Properties)
        {
            property.Order = (info.Type.Name, property.Name) is (nameof(Passage), "cloths" or "rest") or (nameof(FlowSheet), "passages" or "products") ? 1 : 0;
            Func<object, object?, bool>? said = (info.Type.Name, property.Name) switch
            {
                (nameof(Spout), "share") => static (_, value) => value is not 1.0,
                (nameof(Passage), "detacher") => static (_, value) => value is not false,
                (nameof(Passage), "lifted") => static (_, value) => value is IReadOnlyList<Spout> { Count: > 0 },
                (nameof(RollPair), "flutesPerCentimetre") => static (_, value) => value is not 0.0,
                (nameof(RollPair), "disposition") => static (_, value) => value is not Disposition.None,
                _ => null,
            };
            if (said is not null)
            {
                property.ShouldSerialize = said;
            }
        }
    }
}
