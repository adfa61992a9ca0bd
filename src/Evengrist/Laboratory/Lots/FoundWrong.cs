using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>A named person found that an instrument read wrong over a span: from then on those readings speak for no lot and stand on no certificate. The readings themselves stay.</summary>
/// <param name="Span">The instrument and its span.</param>
/// <param name="By">Who found it.</param>
/// <param name="At">When.</param>
public sealed record FoundWrong(WrongSpan Span, string By, Instant At)
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "found-wrong";

    /// <summary>What it is kept as: one instrument, property and beginning.</summary>
    public string Code => FormattableString.Invariant($"{Span.Instrument.Trim().ToUpperInvariant()} {Span.What} {Span.From.ToUnixTimeSeconds()}");

    /// <summary>It as JSON.</summary>
    public string ToJson() => LabJson.WriteShort(this);

    /// <summary>Reads one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out FoundWrong? found, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, read => read.Span.Fault is { } fault ? [fault] : [], out found, out faults, "A finding is an object; read null.");
}
