using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Epcis.Sending;

/// <summary>That a document of events went to somebody: the head of what is kept of it.</summary>
/// <param name="To">Whom it went to.</param>
/// <param name="Outflow">How bins were taken to empty.</param>
/// <param name="Events">Events in it.</param>
/// <param name="Told">Those he had not been told before.</param>
/// <param name="Declared">Those he had been told before and that it declared wrong.</param>
/// <param name="Kept">Version of the paper that keeps them; 0 before it is kept.</param>
/// <param name="Code">The lot whose way it told; null for a span.</param>
/// <param name="From">What happened from then on; null for a way.</param>
/// <param name="Until">What happened before then; null for a way.</param>
public sealed record SentDocument(string To, Outflow Outflow, int Events, int Told, int Declared, int Kept = 0, string? Code = null, Instant? From = null, Instant? Until = null)
{
    /// <summary>Longest name of whom it goes to, letters.</summary>
    public const int LongestName = 60;

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>Reads what was kept.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out SentDocument? sent, out IReadOnlyList<string> faults) => StrictJson.TryRead(json, Options, s => s is null ? ["There is nothing."] : [], out sent, out faults);

    /// <summary>As it is kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);
}
