using System.Globalization;
using Evengrist.Packing.Orders;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>An order as it was typed.</summary>
public sealed class OrderForm
{
    /// <summary><c>keep</c> or <c>cancel</c>.</summary>
    public string? Do { get; set; }

    /// <summary>The version it follows; 0 for a new one.</summary>
    public string? Seen { get; set; }

    /// <summary>Its number.</summary>
    public string? Number { get; set; }

    /// <summary>Code of the customer.</summary>
    public string? Customer { get; set; }

    /// <summary>Code of the product.</summary>
    public string? Product { get; set; }

    /// <summary>How much.</summary>
    public string? Quantity { get; set; }

    /// <summary>What the quantity counts.</summary>
    public string? Unit { get; set; }

    /// <summary>When it is due.</summary>
    public string? Due { get; set; }

    /// <summary>How much being late counts.</summary>
    public string? Priority { get; set; }

    /// <summary>Whether stock may serve it.</summary>
    public bool FromStock { get; set; }

    /// <summary>What else is agreed.</summary>
    public string? Remark { get; set; }

    /// <summary>Why it changes.</summary>
    public string? Reason { get; set; }

    /// <summary>One to begin with: what is kept, or what the address says of a new one.</summary>
    internal static OrderForm Of(KeptOrder? kept, IQueryCollection query, Func<Instant, string> field) => kept is not { Order: var o }
        ? new()
        {
            Seen = "0", Product = query["product"], Due = query["due"], Priority = query["priority"] is [{ Length: > 0 } p] ? p : "1", Unit = nameof(OrderUnit.Kilograms),
            Quantity = decimal.TryParse(query["tonnes"], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var tonnes) && tonnes < 1_000_000 ? (1000 * tonnes).ToString("0.###", CultureInfo.InvariantCulture) : "",
        }
        : new()
        {
            Seen = kept.Version.ToString(CultureInfo.InvariantCulture), Number = o.Number, Customer = o.Customer, Product = o.Product, Quantity = o.Quantity.ToString("0.###", CultureInfo.InvariantCulture), Unit = o.Unit.ToString(), Due = field(o.Due),
            Priority = o.Priority.ToString(CultureInfo.InvariantCulture), FromStock = o.FromStock, Remark = o.Remark,
        };

    /// <summary>Keeps it as the next version; every fault where it cannot be, and then nothing is kept.</summary>
    internal (KeptOrder? Kept, IReadOnlyList<string> Faults) Keep(Mill mill, string? by, Func<string?, Instant?> read, Instant now)
    {
        List<string> faults = [.. string.IsNullOrWhiteSpace(by) ? [Visiting.Visit.Nameless] : Array.Empty<string>()];
        if (!decimal.TryParse((Quantity ?? "").Trim(), NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign, CultureInfo.InvariantCulture, out var quantity))
        {
            faults.Add($"The quantity is a number with a point as decimal mark; read “{Quantity?.Trim()}”.");
        }

        if (!int.TryParse((Priority ?? "1").Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var priority))
        {
            faults.Add($"A priority is 1 to {PackingOrder.MostPriority}; read “{Priority?.Trim()}”.");
        }

        var due = read(Due);
        if (due is null)
        {
            faults.Add($"Due is a day and time; read “{Due}”.");
        }

        if (faults.Count > 0)
        {
            return (null, faults);
        }

        var seen = int.TryParse(Seen, out var version) ? version : 0;
        var old = seen > 0 && PackingOrders.Versions(mill, Number ?? "") is [.., var newest] ? newest.Order : null;
        var order = new PackingOrder((Number ?? "").Trim(), (Customer ?? "").Trim(), (Product ?? "").Trim(), quantity, Unit == nameof(OrderUnit.Packs) ? OrderUnit.Packs : OrderUnit.Kilograms, due!.Value, old?.Taken ?? now, FromStock)
        {
            Priority = priority, Remark = (Remark ?? "").Trim(), Reason = (Reason ?? "").Trim(), IsCancelled = Do == "cancel",
        };
        return PackingOrders.Keep(mill, order, by, seen);
    }
}
