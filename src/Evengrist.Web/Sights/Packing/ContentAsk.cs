using System.Globalization;
using Evengrist.Packing.NetContent;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Bins;

namespace Evengrist.Web.Sights.Packing;

/// <summary>By which rules and prices net content is looked at, as typed into the page or the address.</summary>
/// <param name="Law">US or EU; EU where left out.</param>
/// <param name="Price">What a tonne is worth.</param>
/// <param name="Drift">Allowance for drift, grams.</param>
/// <param name="Packed">Moisture when packed, per cent.</param>
/// <param name="Sold">Moisture when sold, per cent.</param>
/// <param name="Lot">Packages in the lot.</param>
public sealed record ContentAsk(string? Law, string? Price = null, string? Drift = null, string? Packed = null, string? Sold = null, string? Lot = null)
{
    /// <summary>The options, and every fault in what was typed; what is at fault is left out of them.</summary>
    public (ContentOptions Options, IReadOnlyList<string> Faults) Read()
    {
        var faults = new List<string>();
        var rules = (Law ?? "").Trim().ToUpperInvariant() switch { "US" => NetRules.US, "" or "EU" => NetRules.EU, _ => NetRules.None };
        if (rules == NetRules.None)
        {
            faults.Add($"The law is US or EU; read \"{Law}\".");
        }

        var (price, drift) = (TypedNumber.Read("The price of a tonne", Price, faults, 0, 1_000_000), TypedNumber.Read("The allowance for drift, g", Drift, faults, 0, 10_000));
        var (packed, sold) = (TypedNumber.Read("Moisture when packed, %", Packed, faults, 0, 30), TypedNumber.Read("Moisture when sold, %", Sold, faults, 0, 30));
        var lot = TypedNumber.Read("Packages in the lot", Lot, faults, 2, rules == NetRules.US ? PackagePlan.MostLot : BatchPlan.MostBatch);
        if (packed is null != sold is null && faults.Count == 0)
        {
            faults.Add("Give moisture both when packed and when sold, or neither.");
        }

        return (new(rules == NetRules.None ? NetRules.EU : rules)
        {
            Drift = drift ?? 0, PricePerTonne = price is { } p ? (decimal)p : null, Drying = packed is { } a && sold is { } b ? new DryingOut(a, b) : null, Lot = lot is { } n ? (int)n : null,
        }, faults);
    }

    /// <summary>The fields of an address that says the same.</summary>
    public string Query => string.Join('&', new[] { ("law", Law), ("price", Price), ("drift", Drift), ("packed", Packed), ("sold", Sold), ("lot", Lot) }.Where(f => !string.IsNullOrWhiteSpace(f.Item2)).Select(f => $"{f.Item1}={Uri.EscapeDataString(f.Item2!)}"));

    /// <summary>Where figures of a law come from and what of it is from memory.</summary>
    public static string SourceOf(NetRules rules) => rules == NetRules.US
        ? "NIST Handbook 133, category A and table 2-5: lots, samples and allowed variations are from memory, the factors follow from the t distribution; three rows of variations were confirmed by public letters. Check them against the edition in force before use."
        : "Directive 76/211/EEC, Annexes I and II, and the factors of UK SI 2006/659, schedule 2, were read; tolerable errors above 1 kg and their rounding are from memory. Check them against the law in force before use.";

    /// <summary>A number of grams.</summary>
    // A nought that is a little below stands without its sign.
    public static string Grams(double grams, int decimals = 1) => (Math.Round(grams, decimals) + 0.0).ToString("#,0." + new string('0', decimals) + ";−#,0." + new string('0', decimals), CultureInfo.InvariantCulture);
}
