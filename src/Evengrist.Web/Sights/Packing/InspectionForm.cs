using System.Globalization;
using Evengrist.Packing.NetContent;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>An inspection of net content, as typed or begun from a checkweigher's hour. Weights in grams.</summary>
public sealed class InspectionForm
{
    /// <summary>US or EU.</summary>
    public string? Law { get; set; }

    /// <summary>Code of the product.</summary>
    public string? Product { get; set; }

    /// <summary>Packages in the lot.</summary>
    public string? Lot { get; set; }

    /// <summary>The lot in words.</summary>
    public string? LotWords { get; set; }

    /// <summary>Gross weights.</summary>
    public string? Gross { get; set; }

    /// <summary>Gross weights of the second sample.</summary>
    public string? Second { get; set; }

    /// <summary>The empty package.</summary>
    public string? Tare { get; set; }

    /// <summary>Where the tare comes from.</summary>
    public string? TareFrom { get; set; }

    /// <summary>Whether testing spoils the package.</summary>
    public bool Spoils { get; set; }

    /// <summary>Who sampled.</summary>
    public string? SampledBy { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>What else was seen.</summary>
    public string? Remark { get; set; }

    /// <summary>Where the weights come from; the page fills it in.</summary>
    public string? From { get; set; }

    /// <summary>Why what is odd stands.</summary>
    public string? Reason { get; set; }

    /// <summary><c>look</c> or <c>sign</c>.</summary>
    public string? Do { get; set; }

    /// <summary>What was read; null where it cannot be.</summary>
    public ContentInspection? Read { get; private set; }

    /// <summary>Everything against it.</summary>
    public IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What is asked about.</summary>
    public IReadOnlyList<string> Questions { get; private set; } = [];

    /// <summary>One begun from the sample of a checkweigher's hour.</summary>
    public static InspectionForm Of(ContentStand stand, Func<Instant, string> say, Func<Instant, string> field)
    {
        ArgumentNullException.ThrowIfNull(stand);
        ArgumentNullException.ThrowIfNull(say);
        ArgumentNullException.ThrowIfNull(field);
        return new()
        {
            Law = stand.Options.Rules.ToString(), Product = stand.Product.Code, Lot = stand.Lot.ToString(CultureInfo.InvariantCulture), LotWords = $"{stand.Line}, hour from {say(stand.Last.From)}", From = $"checkweigher of {stand.Line}, evenly spread over the hour",
            Gross = string.Join(' ', (stand.Sample ?? []).Select(p => (p.GrossTenths / 10.0).ToString("0.0", CultureInfo.InvariantCulture))), Tare = (stand.Tare?.Mean ?? stand.TareUsed).ToString("0.0#", CultureInfo.InvariantCulture),
            TareFrom = stand.Tare is { } t ? $"mean of {t.Grams.Count} empty packages weighed {say(t.At)}{(t.Delivery.Length > 0 ? $", {t.Delivery}" : "")}" : "the checkweigher's own", At = field(stand.Last.From + Duration.FromHours(1)),
        };
    }

    /// <summary>Reads and looks; keeps it under the next number where it is signed.</summary>
    /// <returns>The number; null where nothing was kept.</returns>
    public string? Act(Mill mill, Instant? at, string? by, string nameless, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var faults = new List<string>(EntryFaults.Of("-", at, by, nameless));
        var product = Products.Find(mill, Product ?? "");
        if (product is null or { PackGrams: 0 })
        {
            faults.Add($"There is no product “{Product}” in packs.");
        }

        var rules = (Law ?? "").Trim().ToUpperInvariant() switch { "US" => NetRules.US, "EU" => NetRules.EU, _ => NetRules.None };
        var lot = TypedNumber.Read("Packages in the lot", Lot, faults, 2, PackagePlan.MostLot, demanded: true);
        var tare = TypedNumber.Read("The empty package, g", Tare, faults, 0, 50_000, demanded: true);
        var (gross, second) = (TareForm.WeightsOf(Gross, faults), TareForm.WeightsOf(Second, faults));
        if (faults.Count > 0)
        {
            Faults = faults;
            return null;
        }

        var label = ContentStand.LabelOf(product!, rules);
        var read = new ContentInspection(rules, product!.Code, label.Grams, (int)lot!.Value, gross, tare!.Value, string.IsNullOrWhiteSpace(SampledBy) ? by!.Trim() : SampledBy.Trim(), at!.Value, by!.Trim())
        {
            ProductName = product.Name, IsInPounds = label.IsInPounds, Lot = (LotWords ?? "").Trim(), Second = second, TareFrom = (TareFrom ?? "").Trim(), Spoils = Spoils, From = string.IsNullOrWhiteSpace(From) ? "typed" : From.Trim(), Remark = (Remark ?? "").Trim(),
        };
        Faults = read.Faults();
        Questions = Faults.Count > 0 ? [] : read.Questions();
        Read = Faults.Count > 0 ? null : read;
        if (Do != "sign" || Faults.Count > 0)
        {
            return null;
        }

        var kept = ContentInspections.Keep(mill, read, Reason ?? "", now);
        Faults = kept.Faults;
        return kept.Number;
    }
}
