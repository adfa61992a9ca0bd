using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Watch;

/// <summary>A bias that a named person set in an instrument: recorded, never applied to readings by the program. The watch begins anew at it.</summary>
/// <param name="Instrument">Which instrument.</param>
/// <param name="What">The property.</param>
/// <param name="At">From when on it is set.</param>
/// <param name="Old">The bias before, added to what the instrument finds, in the property's unit.</param>
/// <param name="New">The bias from then on.</param>
/// <param name="Pairs">On how many pairs it rests.</param>
/// <param name="Reason">Why.</param>
public sealed record BiasSetting(string Instrument, Property What, Instant At, decimal Old, decimal New, int Pairs, string Reason)
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "instrument-bias";

    /// <summary>What it is kept under: the instrument and the property.</summary>
    public string Code => CodeOf(Instrument, What);

    /// <summary>What biases of an instrument and property are kept under.</summary>
    public static string CodeOf(string instrument, Property what) => $"{instrument} {what}";

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Instrument) ? ["A bias belongs to an instrument: name it."] : Array.Empty<string>(),
        .. Enum.IsDefined(What) && What != Property.None ? Array.Empty<string>() : ["A bias belongs to a property: choose it."],
        .. Old is > -1000 and < 1000 && New is > -1000 and < 1000 ? Array.Empty<string>() : ["A bias lies from -1000 to 1000 in the unit of the property."],
        .. Old == New ? ["The new bias is the old one: nothing is set."] : Array.Empty<string>(),
        .. Pairs is >= 1 and <= 10_000 ? Array.Empty<string>() : ["Say on how many pairs it rests, 1 or more."],
        .. string.IsNullOrWhiteSpace(Reason) ? ["Say why it is set: what the pairs showed, what was found at the instrument."] : Array.Empty<string>(),
    ];

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.Write(this);

    /// <summary>Reads one back.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out BiasSetting? setting, out IReadOnlyList<string> faults) => LabJson.TryRead(json, s => s.Faults(), out setting, out faults);
}
