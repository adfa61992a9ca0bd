using System.Text.Json;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>That the label of a pallet was made: who, when, and why where it was asked.</summary>
/// <param name="At">When.</param>
/// <param name="By">Who.</param>
/// <param name="Reason">Why it was labelled all the same; empty where nothing stood against it.</param>
/// <param name="Lot">The lot on it.</param>
/// <param name="Count">The count on it.</param>
public sealed record LabelMade(Instant At, string By, string Reason, string Lot, int Count)
{
    private const string Kind = "label-made";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>The label of a pallet made last; null where none was.</summary>
    public static LabelMade? Last(Mill mill, string pallet)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(pallet);
        return mill.Papers(Kind).Newest(pallet.ToUpperInvariant()) is { } paper ? JsonSerializer.Deserialize<LabelMade>(paper.Json, Options) : null;
    }

    /// <summary>Keeps one.</summary>
    internal static void Keep(Mill mill, string pallet, LabelMade made) => mill.Papers(Kind).KeepNext(pallet.ToUpperInvariant(), JsonSerializer.Serialize(made, Options), made.By);
}
