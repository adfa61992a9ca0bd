using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tracing.Recall;

/// <summary>A recall as a named person issued it: what was asked, which net was taken, what is in it. A paper; it never changes.</summary>
/// <param name="Number">Its number: <c>R-2026-001</c>.</param>
/// <param name="Asked">What was suspect, as it was typed, one a line.</param>
/// <param name="AsOf">The moment looked back from.</param>
/// <param name="Net">The net taken.</param>
/// <param name="ThresholdGrams">Its threshold, grams.</param>
/// <param name="Chance">Its chance, 0 to 1; counts for the narrow net.</param>
/// <param name="Reason">Why.</param>
/// <param name="By">Who issued it.</param>
/// <param name="At">When.</param>
/// <param name="Packages">Codes of its packages.</param>
/// <param name="Contact">Whom a consignee answers, as the person wrote it; empty where it is to be filled in by hand.</param>
public sealed record KeptRecall(
    string Number, string Asked, Instant AsOf, NetKind Net, long ThresholdGrams, double Chance, string Reason, string By, Instant At, IReadOnlyList<string> Packages, string Contact)
{
    /// <summary>Kind of its papers.</summary>
    public const string PaperKind = "recall";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>What the hold on each package says.</summary>
    public string HoldText => $"Recall {Number}: {Reason}";

    /// <summary>The paper's text.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper.</summary>
    /// <param name="json">The text.</param>
    /// <param name="recall">The recall; null where it cannot be read.</param>
    /// <param name="faults">Each fault a sentence.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out KeptRecall? recall, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, read => read is null ? ["It is null; write an object."]
            : read.Number.Length > 0 && read.By.Length > 0 && read.Reason.Length > 0 ? [] : ["A recall has a number, a reason and the name of who issued it."], out recall, out faults);

    /// <summary>The recall that a hold's text names: its number; null where it names none.</summary>
    public static string? NumberIn(string holdText)
    {
        ArgumentNullException.ThrowIfNull(holdText);
        return holdText.StartsWith("Recall R-", StringComparison.Ordinal) && holdText.IndexOf(':', StringComparison.Ordinal) is > 0 and var end ? holdText["Recall ".Length..end] : null;
    }
}
