using Evengrist.Ledger;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;

namespace Evengrist.Records.Packing;

/// <summary>Orders of a file, kept as a whole or not at all. The same file again adds nothing; an order that says something else than the one kept is a fault: correct that one by hand.</summary>
/// <param name="Rows">Each with its line.</param>
public sealed record ImportOrders(IReadOnlyList<(int Line, PackingOrder Order)> Rows)
{
    /// <summary>Everything against the rows, each with its line; empty where nothing is.</summary>
    public IReadOnlyList<(int Line, string Fault)> Faults(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (kept, products) = (First(mill), ByCode(mill));
        var known = mill.Ask(view => Rows.Select(r => r.Order.Customer).Where(c => view.Book.Find(c) is { Kind: PlaceKind.Customer }).ToHashSet(StringComparer.Ordinal));
        return
        [
            .. Rows.SelectMany(r => r.Order.Faults().Concat(r.Order.Against(products.GetValueOrDefault(r.Order.Product.Trim()), known.Contains(r.Order.Customer))).Select(f => (r.Line, f))),
            .. Rows.GroupBy(r => r.Order.Number, StringComparer.OrdinalIgnoreCase).SelectMany(g => g.Skip(1).Select(r => (r.Line, $"The order {r.Order.Number} stands in line {g.First().Line} already."))),
            .. Rows.Where(r => kept.TryGetValue(r.Order.Number, out var first) && !SaysTheSame(first, r.Order))
                .Select(r => (r.Line, $"The order {r.Order.Number} is kept already and says something else: correct it on its page, with the reason.")),
        ];
    }

    /// <summary>What a person should look at, each with its line: a product without an approved label, a due time that is past.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="now">The present moment.</param>
    public IReadOnlyList<(int Line, string Warning)> Warnings(Mill mill, NodaTime.Instant now)
    {
        var products = ByCode(mill);
        return [.. Rows.SelectMany(r => products.TryGetValue(r.Order.Product.Trim(), out var product) ? r.Order.Warnings(product, now).Select(w => (r.Line, w)) : [])];
    }

    /// <summary>Keeps them where nothing is against them.</summary>
    /// <returns>How many were new and how many were known; null where there are faults.</returns>
    public (int Added, int Known)? In(Mill mill, string by)
    {
        if (string.IsNullOrWhiteSpace(by) || Faults(mill).Count > 0)
        {
            return null;
        }

        // A number that is kept is spelled as it was kept: the same order under another case is no second one.
        var spelled = First(mill);
        var (added, further, known) = mill.Papers(PackingOrder.PaperKind).KeepEach([.. Rows.Select(r => (spelled.TryGetValue(r.Order.Number, out var kept) ? kept.Number : r.Order.Number, r.Order.ToJson()))], (_, _) => false, by.Trim());
        return (added + further, known);
    }

    private static Dictionary<string, Product> ByCode(Mill mill) => Products.Newest(mill).Select(k => k.Product).ToDictionary(p => p.Code, StringComparer.OrdinalIgnoreCase);

    // What was kept first is what a file brought; a correction since does not make the same file news.
    private static Dictionary<string, PackingOrder> First(Mill mill) => mill.Papers(PackingOrder.PaperKind).All().Select(PackingOrders.Read).OfType<KeptOrder>()
        .GroupBy(k => k.Order.Number, StringComparer.OrdinalIgnoreCase).ToDictionary(g => g.Key, g => g.First().Order, StringComparer.OrdinalIgnoreCase);

    // When it was taken is said by the file, or was the moment it was read first.
    private static bool SaysTheSame(PackingOrder kept, PackingOrder order) => kept.ToJson() == (order with { Taken = kept.Taken, Number = kept.Number }).ToJson();
}
