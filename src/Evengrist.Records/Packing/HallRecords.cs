using Evengrist.Ledger;
using Evengrist.Packing.Boards;
using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using Evengrist.Laboratory;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>What the ledger and the papers say of the packing hall at a moment.</summary>
public static class HallRecords
{
    /// <summary>Hours over which flows of a bin are taken [ours].</summary>
    public const int FlowHours = 4;

    /// <summary>What is asked when the runs are put in order.</summary>
    public static RunQuestion Question(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var (products, book, campaigns) = (Products.Newest(mill).Select(k => k.Product).ToArray(), KeepLineBook.Newest(mill).Book, KeepMillCampaigns.Newest(mill).Campaigns);
        var kept = PackingPlans.InForce(mill, at)?.Plan;
        CleanDown[] cleaned = [.. CleanDowns.All(mill).Select(c => c.Clean)];
        var orders = Standings(mill, at);
        return mill.Ask(view => new RunQuestion(
            at, orders, products, book,
            [.. book.Lines.Where(l => view.Book.Find(l.Code) is not null).Select(l => new LineNow(l.Code, Last(view.Book, products, view.Book.Named(l.Code), at) is { } last && !IsCleaned(cleaned, l.Code, last.At, at) ? last.Product : null))],
            [.. Bins(view.Book).Select(b => new BinNow(b.Code, b.Material, (double)view.Book.StockOf(b.Id, at).Tonnes, (double)(b.Capacity ?? Mass.FromTonnes(10_000)).Tonnes, Fed(view.Book, b)))], campaigns, mill.Settings.Zone) { Kept = kept });
    }

    /// <summary>Orders taken by a moment, with what the ledger has for them.</summary>
    public static IReadOnlyList<OrderStanding> Standings(Mill mill, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        PackingOrder[] orders = [.. PackingOrders.Newest(mill).Select(k => k.Order).Where(o => o.Taken <= at)];
        Product[] products = [.. Products.Newest(mill).Select(k => k.Product)];
        var plan = PackingPlans.InForce(mill, at)?.Plan;
        var planned = plan?.Runs.Select(r => r.Order).ToHashSet(StringComparer.OrdinalIgnoreCase) ?? [];
        IReadOnlyList<OrderStanding> By(Instant moment) => OrderStanding.Of(orders, products, orders.Length == 0 ? [] : mill.Ask(view => Packages(view.Book, orders, products, moment)), planned);
        var now = By(at);
        return plan is null ? now : PlanCover.Of(plan, plan.Start == at ? now : By(plan.Start), now, at);
    }

    /// <summary>Code of the product that a line packed last by a moment, or its flour where the pack is no product; null where it packed nothing.</summary>
    public static string? LastOn(Mill mill, string line, Instant at)
    {
        ArgumentNullException.ThrowIfNull(mill);
        Product[] products = [.. Products.Newest(mill).Select(k => k.Product)];
        var last = mill.Ask(view => view.Book.Find(line) is { Kind: PlaceKind.PackingLine } place ? Last(view.Book, products, place, at) : null);
        return last is null || IsCleaned(CleanDowns.All(mill).Select(c => c.Clean), line, last.Value.At, at) ? null : last.Value.Product;
    }

    // Cleaned down by a moment after what was packed last, and no laboratory found otherwise.
    private static bool IsCleaned(IEnumerable<CleanDown> all, string line, Instant last, Instant at) => all.Any(c => c.Line.Equals(line, StringComparison.OrdinalIgnoreCase) && c.At >= last && c.At <= at && !c.IsRefuted);

    /// <summary>The flour bins that feed a packing line, by code.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">The moment.</param>
    /// <param name="layered">Whether their layers are reckoned too; without them it is quicker, and there are none.</param>
    public static IReadOnlyList<FlourBinNow> Bins(Mill mill, Instant at, bool layered = true)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view =>
        {
            var flows = new PlaceFlows(view.Book);
            if (!layered)
            {
                return Bins(view.Book).Select(bin => Bin(view.Book, flows, bin, at, [])).ToArray();
            }

            var reckoning = view.Reckoning(Outflow.FirstInFirstOut);
            var snapshot = reckoning.At(at);
            return Bins(view.Book).Select(bin => Bin(view.Book, flows, bin, at, [.. snapshot.ContentOf(bin.Id).Where(l => l.Grams > 0).Select(l => (reckoning.Parcels[l.Parcel].From, reckoning.Parcels[l.Parcel].Until, l.Grams / 1e6))])).ToArray();
        });
    }

    private static FlourBinNow Bin(Book book, PlaceFlows flows, Place bin, Instant at, IReadOnlyList<(Instant, Instant, double)> layers)
    {
        double Of(int hour, bool into) => flows.Within(bin.Id, at - Duration.FromHours(hour + 1), at - Duration.FromHours(hour)).Where(m => into ? m.To == bin.Id : m.From == bin.Id)
            .Sum(m => m.TonnesWithin(at - Duration.FromHours(hour + 1), at - Duration.FromHours(hour)));
        var (into, outOf) = (Enumerable.Range(0, FlowHours).Select(h => Of(h, true)).ToArray(), Enumerable.Range(0, FlowHours).Select(h => Of(h, false)).ToArray());
        var net = into.Zip(outOf, (i, o) => i - o).ToArray();
        var mean = net.Average();
        return new(bin, book.StockOf(bin.Id, at), into.Average(), outOf.Average(), Math.Sqrt(net.Sum(n => (n - mean) * (n - mean)) / (FlowHours - 1) / FlowHours), layers);
    }

    private static IEnumerable<Place> Bins(Book book) => book.OfKind(PlaceKind.FlourBin).Where(b => Fed(book, b).Count > 0).OrderBy(b => b.Code, StringComparer.Ordinal);

    private static IReadOnlyList<string> Fed(Book book, Place bin) => [.. book.Connections.Where(c => c.From == bin.Id && book[c.To].Kind == PlaceKind.PackingLine).Select(c => book[c.To].Code).Order(StringComparer.Ordinal)];

    private static (string Product, Instant At)? Last(Book book, IReadOnlyList<Product> products, Place line, Instant at)
    {
        var last = book.MovementsOf(line.Id).Select(m => book.Movements[m]).Where(m => m.From == line.Id && m.Until <= at && book[m.To].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad).Select(m => (Movement?)m).MaxBy(m => (m!.Value.Until, m.Value.Id));
        return last is { } movement ? (Product.On(products, book[movement.To])?.Code ?? book[movement.To].Material, movement.Until) : null;
    }

    private static IReadOnlyList<OrderPackage> Packages(Book book, IReadOnlyList<PackingOrder> orders, IReadOnlyList<Product> products, Instant at)
    {
        var since = orders.Any(o => o.FromStock) ? Instant.MinValue : orders.Min(o => o.Taken);
        var wanted = orders.Select(o => o.Product).ToHashSet(StringComparer.OrdinalIgnoreCase);
        HashSet<PlaceId> packed = [.. book.Movements.Where((m, i) => m.Until >= since && m.Until <= at && book[m.To].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad && book.Counts(i)).Select(m => m.To)];
        return [.. packed.Select(p => Package(book, products, book[p], at)).OfType<OrderPackage>().Where(p => wanted.Contains(p.Product))];
    }

    // What was emptied elsewhere than to a customer, as into a tote, serves no order.
    private static OrderPackage? Package(Book book, IReadOnlyList<Product> products, Place place, Instant at)
    {
        if (Product.On(products, place) is not { } product || UnitStand.Of(book, place.Id, at) is not { PackedAt: { } packedAt } stand)
        {
            return null;
        }

        var stands = stand.Here > Mass.Zero;
        return stands || stand.Customer is not null ? new(place.Code, product.Code, stand.Packed, packedAt, stands ? null : stand.To!.Code, stands && book.HoldOn(place.Id, at) is not null) : null;
    }
}
