using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Intake.Trade;

/// <summary>The record of one receipt of wheat: from whom, what, when, which lot, how much and how packed, hauled by whom.</summary>
/// <param name="Ticket">The ticket, which is the lot.</param>
/// <param name="Items">Every item in the order of the rule.</param>
/// <remarks>
/// Source: 21 CFR 1.337(a)(1) to (6), 2015 edition. Whether a firm is bound by it (farms and others are exempt, 21 CFR 1.327) is not decided here. Model: docs/model/receipts.md.
/// </remarks>
public sealed record ReceiptRecord(string Ticket, IReadOnlyList<ReceiptItem> Items)
{
    private const string Source = "21 CFR 1.337(a)(1)";
    private const string Food = "21 CFR 1.337(a)(2)";
    private const string Date = "21 CFR 1.337(a)(3)";
    private const string Lot = "21 CFR 1.337(a)(4)";
    private const string Quantity = "21 CFR 1.337(a)(5)";
    private const string Transporter = "21 CFR 1.337(a)(6)";

    /// <summary>Whether every demanded item is there.</summary>
    public bool IsComplete => Items.All(i => !i.IsMissing);

    /// <summary>Names of the items that are not there.</summary>
    public IReadOnlyList<string> Missing => [.. Items.Where(i => i.IsMissing).Select(i => $"{i.What} ({i.Rule["21 CFR ".Length..]})")];

    /// <summary>Assembles the record.</summary>
    /// <param name="ticket">The ticket number.</param>
    /// <param name="source">The immediate previous source that is no transporter; null where no paper names it.</param>
    /// <param name="wheat">Class of the wheat; may be empty.</param>
    /// <param name="variety">Variety; may be empty: a merchant's wheat has none.</param>
    /// <param name="varietyKnowable">Whether a variety exists to be known: wheat from a field has one, mixed wheat from a merchant has not.</param>
    /// <param name="received">The day it was received.</param>
    /// <param name="net">What was received.</param>
    /// <param name="vehicle">The trailer or railcar it lay in; may be empty.</param>
    /// <param name="transporter">The immediate previous transporter; null where no paper names it.</param>
    public static ReceiptRecord Of(string ticket, Party? source, string wheat, string variety, bool varietyKnowable, LocalDate received, Mass net, string vehicle, Party? transporter)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(variety);
        ArgumentNullException.ThrowIfNull(vehicle);
        return new(ticket,
        [
            .. Contact(Source, "source", source),
            new(Food, "type of food", wheat.Length > 0 ? $"wheat, {wheat}, no brand" : ""),
            new(Food, "variety", variety.Length > 0 ? variety : varietyKnowable ? "" : "mixed, from a merchant", Demanded: varietyKnowable),
            new(Date, "date received", FormattableString.Invariant($"{received:R}")),
            new(Lot, "lot or code", ticket),
            new(Quantity, "quantity", net > Mass.Zero ? net.ToString() : ""),
            new(Quantity, "how packed", vehicle.Length > 0 ? $"in bulk, {vehicle}" : "in bulk"),
            .. Contact(Transporter, "transporter", transporter),
        ]);
    }

    /// <summary>Name, address and telephone of a firm, and fax and e-mail where there are any.</summary>
    /// <param name="rule">Where they are demanded.</param>
    /// <param name="who">What the firm is: <c>source</c>.</param>
    /// <param name="party">The firm; null where no paper names it.</param>
    public static IReadOnlyList<ReceiptItem> Contact(string rule, string who, Party? party) =>
    [
        new(rule, $"name of the {who}", party?.Name ?? ""), new(rule, $"address of the {who}", party?.Address ?? ""), new(rule, $"telephone of the {who}", party?.Phone ?? ""),
        new(rule, $"fax of the {who}", party?.Fax ?? "", Demanded: false), new(rule, $"e-mail of the {who}", party?.Email ?? "", Demanded: false),
    ];
}
