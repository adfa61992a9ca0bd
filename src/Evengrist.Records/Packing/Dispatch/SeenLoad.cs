using Evengrist.Packing.Dispatch;
using NodaTime;

namespace Evengrist.Records.Packing.Dispatch;

/// <summary>A load with all that is known of it at a moment: the one piece that assembles it for pages, HTTP, the command line and the acts at the ramp.</summary>
/// <param name="Load">The load.</param>
/// <param name="Packages">Its packages as they are known.</param>
/// <param name="Filled">It, set against the orders it names.</param>
/// <param name="Papers">What the papers say.</param>
/// <param name="At">The moment.</param>
public sealed record SeenLoad(DispatchLoad Load, IReadOnlyList<RampPackage> Packages, LoadAgainstOrders Filled, RampPapers Papers, Instant At)
{
    /// <summary>The mill's rules.</summary>
    public DispatchRules Rules => Papers.Rules;

    /// <summary>The consignee's card; null where none is kept.</summary>
    public ConsigneeCard? Card => Papers.CardOf(Load.Consignee);

    /// <summary>What stands against its leaving, were the seals found as they were put on; empty once it is over.</summary>
    public IReadOnlyList<LoadFinding> Findings => Load.IsOpen ? Against(Load.Sealed?.Numbers ?? []) : [];

    private LocalDate Today => At.InZone(Papers.Settings.Zone).Date;

    /// <summary>Looks at a load; null where none of the number is kept.</summary>
    public static SeenLoad? Of(Mill mill, string? number, Instant at) => DispatchShelf.Find(mill, number) is { } load ? Of(mill, RampPapers.Of(mill), load, at) : null;

    /// <summary>Looks at a load with papers that were read before. Of one that left later, its packages are seen as they left.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="papers">What the papers say.</param>
    /// <param name="load">The load.</param>
    /// <param name="at">The moment.</param>
    public static SeenLoad Of(Mill mill, RampPapers papers, DispatchLoad load, Instant at)
    {
        ArgumentNullException.ThrowIfNull(papers);
        ArgumentNullException.ThrowIfNull(load);
        var packages = Look(mill, papers, load, at, load.Packages.Select(p => p.Code));
        return new(load, packages, Against(mill, papers, load, packages, at), papers, at);
    }

    /// <summary>What loads carry of an order, all of them that name it: what was sent, and what stands on open ones.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="order">Number of the order.</param>
    /// <param name="at">The moment.</param>
    public static OrderOnLoads OfOrder(Mill mill, string order, Instant at)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(order);
        var papers = RampPapers.Of(mill);
        return Against(mill, papers, new DispatchLoad("", at.InZone(papers.Settings.Zone).Date, "") { Orders = [order.Trim()] }, [], at).Orders.Single();
    }

    /// <summary>What stands against its leaving with seals as read at the gate.</summary>
    /// <param name="seals">The seals.</param>
    public IReadOnlyList<LoadFinding> Against(IReadOnlyList<string> seals) => DepartureModel.Of(Load, Packages, seals, Rules, Card, Filled, Today);

    /// <summary>Looks at a package that is scanned onto a load, and says what stands against it.</summary>
    internal static (RampPackage Package, IReadOnlyList<LoadFinding> Findings) Scanned(Mill mill, DispatchLoad load, string code, Instant at)
    {
        var papers = RampPapers.Of(mill);
        var seen = Look(mill, papers, load, at, load.Packages.Select(p => p.Code).Prepend(code));
        return (seen[0], ScanModel.Of(load, seen[0], [.. seen.Skip(1)], papers.Rules, papers.CardOf(load.Consignee), Against(mill, papers, load, seen, at), at.InZone(papers.Settings.Zone).Date));
    }

    private static IReadOnlyList<RampPackage> Look(Mill mill, RampPapers papers, DispatchLoad load, Instant at, IEnumerable<string> codes) =>
        RampPackages.Of(mill, papers, [.. codes], load.Departed is { } left && left.At > at ? left.At : at, load.Number);

    private static LoadAgainstOrders Against(Mill mill, RampPapers papers, DispatchLoad load, IReadOnlyList<RampPackage> packages, Instant at)
    {
        if (load.Orders.Count == 0)
        {
            return LoadAgainstOrders.None;
        }

        // What left is seen as it left: where it lies since is another matter.
        var loads = papers.Joined(load).Select(l => new CarryingLoad(l, l == load && l.Departed is null ? packages : RampPackages.Of(mill, papers, [.. l.Packages.Select(p => p.Code)], l.Departed?.At ?? at, l.Number))).ToArray();
        return LoadAgainstOrders.Of(load, loads, [.. loads.SelectMany(l => LoadAgainstOrders.Numbers(l.Load)).Distinct(StringComparer.OrdinalIgnoreCase).Select(papers.Named)]);
    }
}
