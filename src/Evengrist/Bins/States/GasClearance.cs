using System.Text.Json;

namespace Evengrist.Bins.States;

/// <summary>What the licensed person stated when a bin was cleared of fumigant. Kept as entered: nothing is judged or computed from it.</summary>
/// <param name="Person">Who states that it is clear.</param>
/// <param name="Licence">The licence or certificate number as given.</param>
/// <param name="Readings">Gas readings as given, in words with their unit; may be empty.</param>
public sealed record GasClearance(string Person, string Licence, string Readings = "")
{
    /// <summary>What is missing; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults =>
    [
        .. string.IsNullOrWhiteSpace(Person) ? ["Give the name of the licensed person who states that the bin is clear of gas."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Licence) ? ["Give that person's licence number."] : Array.Empty<string>(),
    ];

    /// <summary>In words for people: <c>cleared as stated by R. Voss, licence 4711; 0.05 ppm at the hatch</c>.</summary>
    public string Words => $"cleared as stated by {Person}, licence {Licence}{(Readings.Length > 0 ? "; " + Readings : "")}";

    /// <summary>The particulars as JSON.</summary>
    public string ToJson() => JsonSerializer.Serialize(new { person = Person, licence = Licence, readings = Readings });

    /// <summary>Reads the particulars; null where they are none.</summary>
    public static GasClearance? Read(string json)
    {
        try
        {
            using var document = JsonDocument.Parse(json);
            string Text(string name) => document.RootElement.TryGetProperty(name, out var value) && value.ValueKind == JsonValueKind.String ? value.GetString()! : "";
            return document.RootElement.ValueKind == JsonValueKind.Object ? new GasClearance(Text("person"), Text("licence"), Text("readings")) : null;
        }
        catch (JsonException)
        {
            return null;
        }
    }
}
