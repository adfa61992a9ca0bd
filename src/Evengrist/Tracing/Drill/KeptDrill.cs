using System.Diagnostics.CodeAnalysis;
using System.Text.Encodings.Web;
using System.Text.Json;
using Evengrist.Quantities;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Tracing.Drill;

/// <summary>A drill: started by a named person, closed or aborted by one. A paper; its second version ends it.</summary>
/// <param name="Number">Its number: <c>D-2026-001</c>.</param>
/// <param name="Subject">Code of the truck or package it is about.</param>
/// <param name="ThresholdGrams">A package counts when it holds more, grams.</param>
/// <param name="Net">The net taken as the list.</param>
/// <param name="AsOf">The moment of the ledger looked back from.</param>
/// <param name="StartedBy">Who started it.</param>
/// <param name="StartedAt">When the question was put, by the clock on the wall.</param>
/// <param name="Seed">The seed it was picked by; null where a person named it.</param>
/// <param name="EndedBy">Who closed or aborted it; null while it runs.</param>
/// <param name="EndedAt">When the list was there, or it was aborted; null while it runs.</param>
/// <param name="Aborted">Why it was aborted; null where it was not.</param>
/// <param name="Note">What the person who closed it says; may be empty.</param>
/// <param name="Score">How it went; null while it runs or where it was aborted.</param>
public sealed record KeptDrill(
    string Number, string Subject, long ThresholdGrams, NetKind Net, Instant AsOf, string StartedBy, Instant StartedAt, int? Seed = null,
    string? EndedBy = null, Instant? EndedAt = null, string? Aborted = null, string? Note = null, DrillScore? Score = null)
{
    /// <summary>Kind of its papers.</summary>
    public const string PaperKind = "recall drill";

    private static readonly JsonSerializerOptions Options = new(StrictJson.Options()) { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    /// <summary>Whether it still runs.</summary>
    public bool IsOpen => EndedAt is null;

    /// <summary>From question to list by the clock on the wall; null while it runs or where it was aborted.</summary>
    public Duration? Clock => Aborted is null && EndedAt is { } end ? end - StartedAt : null;

    /// <summary>The paper's text.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper.</summary>
    /// <param name="json">The text.</param>
    /// <param name="drill">The drill; null where it cannot be read.</param>
    /// <param name="faults">Each fault a sentence.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out KeptDrill? drill, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, read => read is null ? ["It is null; write an object."]
            : read.Subject.Length > 0 && read.StartedBy.Length > 0 ? [] : ["A drill has a subject and the name of who started it."], out drill, out faults);
}
