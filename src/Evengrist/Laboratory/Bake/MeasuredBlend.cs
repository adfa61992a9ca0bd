using System.Diagnostics.CodeAnalysis;

namespace Evengrist.Laboratory.Bake;

/// <summary>A blend of flours whose dough property was measured after it was guessed: what later guesses learn from. Kept as a paper.</summary>
/// <param name="Code">Its own code.</param>
/// <param name="Property">One of <see cref="Properties"/>.</param>
/// <param name="Parts">The flours: shares of the blend's flour, summing to 1.</param>
/// <param name="Measured">What the blend came to, in the unit of the property.</param>
public sealed record MeasuredBlend(string Code, string Property, IReadOnlyList<BlendPart> Parts, double Measured)
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "measured-blend";

    private const int LongestCode = 40;

    /// <summary>Dough properties that are guessed, each with its unit. Falling numbers are none: they are blended by the mix's own rule.</summary>
    public static IReadOnlyList<string> Properties { get; } =
        ["water absorption, %", "dough development time, min", "dough stability, min", "extensibility, mm", "resistance, BU", "deformation energy W, 10⁻⁴ J", "wet gluten 14mb, %", "specific volume, mL/g"];

    /// <summary>The linear guess: Σ share × value.</summary>
    public double Linear => Parts.Sum(p => p.Share * p.Value);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Code) || Code.Trim() != Code || Code.Length > LongestCode ? [$"A blend has a code of 1 to {LongestCode} characters without space at either end."] : Array.Empty<string>(),
        .. BlendPart.Faults(Property, Parts),
        .. Measured is >= 0 and <= BlendPart.Most ? Array.Empty<string>() : [FormattableString.Invariant($"What was measured lies from 0 to {BlendPart.Most}; read {Measured}.")],
    ];

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.Write(this);

    /// <summary>Reads a blend and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="blend">The blend; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out MeasuredBlend? blend, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, b => b.Parts.Any(p => p is null) ? ["A flour of the blend is null."] : b.Faults(), out blend, out faults);
}

/// <summary>A flour of a blend.</summary>
/// <param name="Flour">Which flour.</param>
/// <param name="Share">Its share of the blend's flour, 0 to 1.</param>
/// <param name="Value">Its own dough property.</param>
public sealed record BlendPart(string Flour, double Share, double Value)
{
    /// <summary>Greatest value that any of the properties has [ours].</summary>
    public const double Most = 2000;

    /// <summary>What is wrong with the flours of a blend, each a sentence; empty where nothing is.</summary>
    /// <param name="property">Of which property.</param>
    /// <param name="parts">The flours.</param>
    public static IReadOnlyList<string> Faults(string property, IReadOnlyList<BlendPart> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return
        [
            .. MeasuredBlend.Properties.Contains(property) ? Array.Empty<string>() : [$"“{property}” is no dough property that is guessed: {string.Join("; ", MeasuredBlend.Properties)}."],
            .. parts.Count is >= 2 and <= 12 ? Array.Empty<string>() : [$"A blend has 2 to 12 flours; read {parts.Count}."],
            .. parts.Where(p => string.IsNullOrWhiteSpace(p.Flour)).Take(1).Select(_ => "Each flour of a blend has a name."),
            .. parts.GroupBy(p => p.Flour, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands twice; give it one share."),
            .. parts.Where(p => p.Share is not (> 0 and < 1)).Select(p => FormattableString.Invariant($"{p.Flour}: a share lies above 0 and below 100 %; read {100 * p.Share:0.##}.")),
            .. parts.Where(p => p.Value is not (>= 0 and <= Most)).Select(p => FormattableString.Invariant($"{p.Flour}: its value lies from 0 to {Most}; read {p.Value}.")),
            .. Math.Abs(parts.Sum(p => p.Share) - 1) <= 1e-6 ? Array.Empty<string>() : [FormattableString.Invariant($"Shares sum to 100 %; these sum to {100 * parts.Sum(p => p.Share):0.##} %.")],
        ];
    }
}
