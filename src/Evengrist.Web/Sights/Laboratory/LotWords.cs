using System.Globalization;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Records.Laboratory;
using Evengrist.Web.Face;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>Lots in words.</summary>
internal static class LotWords
{
    /// <summary>Shape and word of a lot's state.</summary>
    public static (StateKind Kind, string Word) State(SeenLot lot) => lot.State switch
    {
        LotState.Held => (StateKind.Hold, lot.Decision?.Verdict == LotVerdict.Hold ? "HOLD" : $"HOLD on {lot.Held} of {lot.Packages.Count}"),
        LotState.Released => (StateKind.Clear, "released"),
        LotState.Rework => (StateKind.Stop, "to rework"),
        LotState.Downgraded => (StateKind.Watch, $"downgraded to {lot.Decision!.As}"),
        _ => (StateKind.Watch, lot.Here == 0 ? "gone undecided" : "waiting"),
    };

    /// <summary>What was decided, in words.</summary>
    public static string Verdict(LotDecision decision) => decision.Verdict switch
    {
        LotVerdict.Release => "released",
        LotVerdict.Hold => "held",
        LotVerdict.Rework => "sent to rework",
        _ => $"downgraded to {decision.As}",
    };

    /// <summary>A result with the decimals of its property.</summary>
    public static string Value(decimal? value, Property what) => value is { } number ? number.ToString(what == Property.Ash ? "0.000" : what == Property.FallingNumber ? "0" : "0.00", CultureInfo.InvariantCulture) : "none";

    /// <summary>A chance in per cent; a dash where none is stated.</summary>
    public static string Chance(double? chance) => chance switch
    {
        null => "–",
        > 0.9995 => "> 99.9 %",
        < 0.0005 => "< 0.1 %",
        { } p => (100 * p).ToString("0.0", CultureInfo.InvariantCulture) + " %",
    };

    /// <summary>± of a result, k = 2.</summary>
    public static string PlusMinus(LotResult result) => result.Outcome is { } outcome ? (2 * outcome.Uncertainty).ToString(result.Item.What == Property.Ash ? "0.000" : "0.00", CultureInfo.InvariantCulture) : "not known";
}
