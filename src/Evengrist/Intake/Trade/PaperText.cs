using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Intake.Trade;

/// <summary>Papers of the scale house as JSON text and back.</summary>
/// <remarks>Camel case; dates as 2025-07-09. Unknown and missing fields are faults.</remarks>
public static class PaperText
{
    /// <summary>The paper as JSON.</summary>
    public static string Write<T>(T paper)
        where T : class, ITradePaper
    {
        ArgumentNullException.ThrowIfNull(paper);
        return JsonSerializer.Serialize(paper, TermsJson.Options);
    }

    /// <summary>Reads a paper and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="paper">The paper; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead<T>(string json, [NotNullWhen(true)] out T? paper, out IReadOnlyList<string> faults)
        where T : class, ITradePaper
    {
        return StrictJson.TryRead(json, TermsJson.Options, read => read is null ? ["A paper is a JSON object; read null."] : read.Faults(), out paper, out faults);
    }

    internal static IEnumerable<string> Lines(string what, params (string Name, string? Text, bool Demanded)[] fields)
    {
        foreach (var (name, text, demanded) in fields)
        {
            if (demanded && string.IsNullOrWhiteSpace(text))
            {
                yield return $"{what} needs its {name}.";
            }
            else if (text is { Length: > 200 } || text?.Any(char.IsControl) == true)
            {
                yield return $"{what}: the {name} is one line of at most 200 characters.";
            }
        }
    }
}
