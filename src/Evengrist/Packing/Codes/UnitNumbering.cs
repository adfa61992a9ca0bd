using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Quantities;

namespace Evengrist.Packing.Codes;

/// <summary>How the mill numbers its pallets (SSCC): under which company prefix, with which extension digit, from which serial on. Kept by version. Model: docs/model/codes.md.</summary>
/// <param name="Prefix">The company prefix lent by GS1, 4 to 12 digits.</param>
/// <param name="Extension">The extension digit, 0 to 9: ten times as many numbers, free to choose.</param>
public sealed record UnitNumbering(string Prefix, int Extension = 0)
{
    /// <summary>Kind and code of its paper.</summary>
    public const string Kind = "sscc-numbering", Code = "mill";

    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>None: no prefix is kept, and no pallet gets a number.</summary>
    public static UnitNumbering None { get; } = new("");

    /// <summary>First serial this program gives, at least 1: above all that were given by other means before.</summary>
    public int First { get; init; } = 1;

    /// <summary>Where its serials are counted: extension digit and prefix.</summary>
    public string Series => FormattableString.Invariant($"{Extension}{Prefix}");

    /// <summary>The number of a serial; null where there is no room for it behind the prefix.</summary>
    /// <param name="serial">At least 0.</param>
    public Sscc? Number(long serial) => CompanyPrefix.TryParse(Prefix, out var prefix, out _) && serial >= 0 && serial < prefix.LogisticUnits ? prefix.LogisticUnit(serial, Extension) : null;

    /// <summary>The serial of a number of this series; null where it is of another.</summary>
    public long? Serial(Sscc sscc)
    {
        ArgumentNullException.ThrowIfNull(sscc);
        return Prefix.Length > 0 && sscc.Digits.StartsWith(Series, StringComparison.Ordinal) ? long.Parse(sscc.Digits.AsSpan(Series.Length, Sscc.Length - 1 - Series.Length), System.Globalization.CultureInfo.InvariantCulture) : null;
    }

    /// <summary>Reads and checks one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out UnitNumbering? numbering, out IReadOnlyList<string> faults) => StrictJson.TryRead(json, Options, Check, out numbering, out faults);

    /// <summary>As it is kept.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    private static IReadOnlyList<string> Check(UnitNumbering? read) => read is null ? ["""Numbering looks like {"prefix":"9521234","extension":0,"first":1}"""] :
    [
        .. CompanyPrefix.TryParse(read.Prefix, out var prefix, out var refusal) ? Array.Empty<string>() : [refusal],
        .. read.Extension is >= 0 and <= 9 ? Array.Empty<string>() : [FormattableString.Invariant($"The extension is one digit, 0 to 9; got {read.Extension}.")],
        .. read.First >= 1 && (prefix is null || read.First < prefix.LogisticUnits) ? Array.Empty<string>() : [FormattableString.Invariant($"The first serial is at least 1 and fits behind the prefix; got {read.First}.")],
    ];
}
