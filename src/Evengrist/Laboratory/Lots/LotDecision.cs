using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>What was decided of a lot: who, when, why, and what was known then. Kept as a paper by lot; a later decision is the next version.</summary>
/// <param name="Lot">Code of the lot.</param>
/// <param name="Verdict">What was decided.</param>
/// <param name="By">The named person.</param>
/// <param name="At">When.</param>
/// <param name="Reason">Why; demanded of all but a release that the figures advise.</param>
public sealed record LotDecision(string Lot, LotVerdict Verdict, string By, Instant At, string Reason)
{
    /// <summary>The kind of its papers.</summary>
    public const string Kind = "lot-decision";

    /// <summary>Which flour a downgraded lot may go as; empty otherwise.</summary>
    public string As { get; init; } = "";

    /// <summary>The specification it was held against: code and version; empty where there was none.</summary>
    public string Specification { get; init; } = "";

    /// <summary>The results as they stood.</summary>
    public IReadOnlyList<DecidedResult> Results { get; init; } = [];

    /// <summary>Whether certificates may be made for it.</summary>
    public bool IsReleased => Verdict is LotVerdict.Release or LotVerdict.Downgrade;

    /// <summary>The decision as JSON.</summary>
    public string ToJson() => LabJson.WriteShort(this);

    /// <summary>Reads one; each fault a sentence.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out LotDecision? decision, out IReadOnlyList<string> faults) =>
        LabJson.TryRead(json, _ => [], out decision, out faults, "A decision is an object; read null.");
}

/// <summary>One line of a specification as it stood when a lot was decided.</summary>
/// <param name="What">The property.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Advice">What it advised; empty where nothing.</param>
/// <param name="Value">The result as reported; null where there was none.</param>
/// <param name="Chance">Chance inside, 0 to 1; null where none could be stated.</param>
public sealed record DecidedResult(Property What, string Unit, string Advice, decimal? Value = null, double? Chance = null)
{
    /// <summary>The moisture basis of the value.</summary>
    public Basis Basis { get; init; }

    /// <summary>Why its instrument was not to be believed unasked; empty where nothing spoke against it.</summary>
    public string OutOfCheck { get; init; } = "";

    /// <summary>A line as it stands.</summary>
    public static DecidedResult Of(LotResult result)
    {
        ArgumentNullException.ThrowIfNull(result);
        return new(result.Item.What, result.Item.Unit, result.Advice?.Words ?? "", result.Reported, result.Outcome?.Chance) { Basis = result.Item.Basis, OutOfCheck = result.OutOfCheck };
    }
}
