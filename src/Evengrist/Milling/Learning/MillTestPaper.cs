using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Milling.Learning;

/// <summary>A test of a mill unit as a mill keeps it: a paper by version, a correction is the next. Page: docs/model/mill-tuning.md.</summary>
/// <param name="Unit">Code of the mill unit.</param>
/// <param name="TakenAt">When it was taken.</param>
/// <param name="TakenBy">Who took it.</param>
/// <param name="SheetVersion">Version of the unit's flow sheet in force then.</param>
/// <param name="Wheat">The wheat at first break then.</param>
public sealed record MillTestPaper(string Unit, Instant TakenAt, string TakenBy, int SheetVersion, PosedWheat Wheat) : TestReadings
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "mill-test";

    /// <summary>Most characters of a name, a remark or a reason [ours].</summary>
    public const int LongestText = 400;

    private static readonly LocalDateTimePattern Minute = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HHmm");
    private static readonly JsonSerializerOptions Options = Written();

    /// <summary>Basis of ash and protein of the streams.</summary>
    public Basis Basis { get; init; } = Basis.At14;

    /// <summary>What else has to be known.</summary>
    public string Remark { get; init; } = "";

    /// <summary>Why it is struck and counts no longer; null where it stands.</summary>
    public string? Struck { get; init; }

    /// <summary>What people call it: unit, day and minute by the mill's clock, as UA-2025-09-16T0900.</summary>
    public string CodeIn(DateTimeZone zone) => $"{Unit}-{Minute.Format(TakenAt.InZone(zone).LocalDateTime)}";

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="sheet">The flow sheet in the version in force then.</param>
    public IReadOnlyList<string> Faults(string name, FlowSheet sheet) =>
    [
        .. string.IsNullOrWhiteSpace(TakenBy) || TakenBy.Length > LongestText ? ["Say who took the test, by name."] : Array.Empty<string>(),
        .. Remark.Length > LongestText ? [$"The remark is said in {LongestText} letters or fewer."] : Array.Empty<string>(),
        .. Struck is { } why && why.Trim().Length is 0 or > LongestText ? [$"Say why the test is struck, in up to {LongestText} letters: who reads it later was not there."] : Array.Empty<string>(),
        .. Basis.IsStated ? Array.Empty<string>() : ["Ash and protein of streams need a moisture basis: dry, 14mb or another."],
        .. FaultsOf(name, sheet, Wheat, Basis),
    ];

    /// <summary>The test as tuning takes it.</summary>
    /// <param name="name">What it is called.</param>
    /// <param name="sheet">The flow sheet in the version in force then.</param>
    public MillTest On(string name, FlowSheet sheet) => Made(name, sheet, Wheat, Basis);

    /// <summary>As the paper says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper; whether it fits the flow sheet is asked with <see cref="Faults"/>.</summary>
    /// <param name="json">The text.</param>
    /// <param name="paper">The test; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out MillTestPaper? paper, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, p => p is null ? ["A mill test is an object; read null."] : Array.Empty<string>(), out paper, out faults);

    private static JsonSerializerOptions Written()
    {
        var options = StrictJson.Options();
        options.Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping;
        return options;
    }
}
