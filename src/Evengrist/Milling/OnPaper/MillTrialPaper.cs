using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Milling.OnPaper;

/// <summary>A trial of a mill unit as a mill keeps it by a name: a paper by version, a change is the next. What was typed is kept as it was, so that nothing of it is lost.</summary>
/// <param name="Unit">Code of the mill unit.</param>
/// <param name="Name">What people call it; up to <see cref="LongestName"/> characters.</param>
/// <param name="SheetVersion">Version of the unit's flow sheet it was tried on.</param>
/// <param name="Typed">What was typed, by field.</param>
public sealed record MillTrialPaper(string Unit, string Name, int SheetVersion, IReadOnlyDictionary<string, string> Typed)
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "mill-trial";

    /// <summary>Most characters of a name [ours].</summary>
    public const int LongestName = 60;

    /// <summary>Most characters of a remark or a reason [ours].</summary>
    public const int LongestText = 400;

    private const int MostFields = 200;
    private const int LongestField = 4000;
    private static readonly JsonSerializerOptions Options = Written();

    /// <summary>What else has to be known.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Why it is struck; null where it stands.</summary>
    public string? Struck { get; init; }

    /// <summary>What it is kept under: unit and name.</summary>
    public string Code => $"{Unit}/{Name}";

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Name.Length is > 0 and <= LongestName && Name == Name.Trim() && !Name.Any(char.IsControl) ? Array.Empty<string>() : [$"Give the trial a name of 1 to {LongestName} characters, as “wider third break”."],
        .. Remark.Length > LongestText ? [$"The remark is said in {LongestText} characters or fewer."] : Array.Empty<string>(),
        .. Struck is { } why && why.Trim().Length is 0 or > LongestText ? [$"Say why the trial is struck, in up to {LongestText} characters: who reads it later was not there."] : Array.Empty<string>(),
        .. Typed.Count > MostFields || Typed.Any(t => t.Key.Length > LongestName || t.Value is null || t.Value.Length > LongestField) ? ["More was typed than a trial holds: shorten it."] : Array.Empty<string>(),
    ];

    /// <summary>As the paper says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="paper">The trial; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out MillTrialPaper? paper, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, p => p is null ? ["A trial is an object; read null."] : p.Faults(), out paper, out faults);

    private static JsonSerializerOptions Written()
    {
        var options = StrictJson.Options();
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        return options;
    }
}
