using System.Text.Json;
using System.Text.Json.Serialization;
using System.Text.Json.Serialization.Metadata;
using Evengrist.Quantities;

namespace Evengrist.Intake.Grading;

/// <summary>A house class as JSON text and back, without loss: what is kept as a paper of the kind <see cref="Kind"/>.</summary>
/// <remarks>Camel case; properties by name (<c>Protein</c>); a basis as <c>12mb</c> or <c>dry</c>. Unknown and missing fields are faults.</remarks>
public static class HouseClassJson
{
    /// <summary>The kind of paper.</summary>
    public const string Kind = "house-class";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options())
    {
        WriteIndented = true,
        DefaultIgnoreCondition = JsonIgnoreCondition.Never,
        TypeInfoResolver = new DefaultJsonTypeInfoResolver { Modifiers = { LeaveOutWhatSaysNothing } },
    };

    /// <summary>The class as JSON.</summary>
    public static string Write(HouseClass house)
    {
        ArgumentNullException.ThrowIfNull(house);
        return JsonSerializer.Serialize(house, Options);
    }

    /// <summary>Reads a house class and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="house">The class; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [System.Diagnostics.CodeAnalysis.NotNullWhen(true)] out HouseClass? house, out IReadOnlyList<string> faults)
    {
        return StrictJson.TryRead(json, Options, Faults, out house, out faults);
    }

    private static IReadOnlyList<string> Faults(HouseClass? read) => read is null || read.Limits.Any(l => l is null) || read.Bands.Any(b => b is null)
        ? ["A house class is an object whose bands are names and whose limits are objects; read null."]
        : read.Faults();

    private static void LeaveOutWhatSaysNothing(JsonTypeInfo type)
    {
        foreach (var property in type.Properties)
        {
            property.ShouldSerialize = (_, value) => value is not (null or "" or false or System.Collections.ICollection { Count: 0 } or Basis { IsStated: false });
        }
    }
}
