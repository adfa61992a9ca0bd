using Evengrist.Intake.Trade;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Packing.Dispatch;

/// <summary>The record of one release of flour or feed: to whom, what, when, which lots, how much and how packed, hauled by whom.</summary>
/// <param name="Load">Number of the load; of a movement that no load names, the package.</param>
/// <param name="Consignee">Code of the consignee's place.</param>
/// <param name="At">When it left.</param>
/// <param name="Lots">What was released, lot by lot.</param>
/// <param name="Items">Every item in the order of the rule.</param>
/// <remarks>Source: 21 CFR 1.345(a)(1) to (6), read in copies of 2019 and of April 2026. Item (b), the source of each ingredient, is <see cref="ReleaseSource"/>. Whether the rule binds the firm is not decided here. Model: docs/model/dispatch.md.</remarks>
public sealed record ReleaseRecord(string Load, string Consignee, Instant At, IReadOnlyList<ReleasedLot> Lots, IReadOnlyList<ReceiptItem> Items)
{
    private const string Recipient = "21 CFR 1.345(a)(1)", Food = "21 CFR 1.345(a)(2)", Date = "21 CFR 1.345(a)(3)", Lot = "21 CFR 1.345(a)(4)", Quantity = "21 CFR 1.345(a)(5)", Transporter = "21 CFR 1.345(a)(6)";

    /// <summary>Whether every demanded item is there.</summary>
    public bool IsComplete => Items.All(i => !i.IsMissing);

    /// <summary>Names of the items that are not there.</summary>
    public IReadOnlyList<string> Missing => [.. Items.Where(i => i.IsMissing).Select(i => $"{i.What} ({i.Rule["21 CFR ".Length..]})")];

    /// <summary>What left, all together.</summary>
    public Mass Mass => Lots.Aggregate(Mass.Zero, (sum, l) => sum + l.Mass);

    /// <summary>Assembles the record.</summary>
    /// <param name="load">Number of the load, or the package.</param>
    /// <param name="at">When it left.</param>
    /// <param name="day">The day that was, in the mill's zone.</param>
    /// <param name="consignee">Code of the consignee's place.</param>
    /// <param name="recipient">The consignee as a firm; null where no card is kept.</param>
    /// <param name="lots">What was released.</param>
    /// <param name="transporter">Who hauled it; null where no paper names it.</param>
    /// <param name="trailer">The trailer; may be empty.</param>
    public static ReleaseRecord Of(string load, Instant at, LocalDate day, string consignee, Party? recipient, IReadOnlyList<ReleasedLot> lots, Party? transporter, string trailer)
    {
        ArgumentNullException.ThrowIfNull(lots);
        ArgumentNullException.ThrowIfNull(trailer);
        string Each(Func<ReleasedLot, string> what) => lots.All(l => what(l).Length > 0) ? string.Join("; ", lots.Select(what).Distinct()) : "";
        return new(load, consignee, at, lots,
        [
            .. ReceiptRecord.Contact(Recipient, "recipient", recipient), new(Food, "type of food", Each(l => l.Food)), new(Date, "date released", FormattableString.Invariant($"{day:R}")),
            new(Lot, "lot or code", Each(l => l.Lot)), new(Quantity, "quantity", lots.Count > 0 && lots.All(l => l.Mass > Mass.Zero) ? string.Join("; ", lots.Select(l => l.Mass.ToString())) : ""),
            new(Quantity, "how packed", Each(l => l.PackedAs)), .. ReceiptRecord.Contact(Transporter, "transporter", transporter), new(Transporter, "trailer", trailer, Demanded: false),
        ]);
    }
}

/// <summary>What of one lot was released together.</summary>
/// <param name="Food">What it is, with brand where there is one; empty where nothing says.</param>
/// <param name="Lot">Code of the lot; that of the package where it is in none.</param>
/// <param name="PackedAs">How packed: <c>24 pallets of 40 × 25 kg</c>.</param>
/// <param name="Mass">How much.</param>
/// <param name="Packages">Codes of the packages.</param>
public sealed record ReleasedLot(string Food, string Lot, string PackedAs, Mass Mass, IReadOnlyList<string> Packages);
