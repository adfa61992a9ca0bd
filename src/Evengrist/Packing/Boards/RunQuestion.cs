using Evengrist.Packing.Lines;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using NodaTime;

namespace Evengrist.Packing.Boards;

/// <summary>What the records say at a moment of orders, lines and bins.</summary>
/// <param name="Start">The moment the plan begins.</param>
/// <param name="Orders">Orders as they stand.</param>
/// <param name="Products">The products.</param>
/// <param name="Book">The lines.</param>
/// <param name="Lines">Lines as they stand.</param>
/// <param name="Bins">Flour bins as they stand.</param>
/// <param name="Campaigns">What the mill means to make.</param>
/// <param name="Zone">The mill's zone.</param>
public sealed record RunQuestion(
    Instant Start, IReadOnlyList<OrderStanding> Orders, IReadOnlyList<Product> Products, LineBook Book, IReadOnlyList<LineNow> Lines, IReadOnlyList<BinNow> Bins, MillCampaigns Campaigns, DateTimeZone Zone)
{
    /// <summary>The plan in force: its locked runs, and those under way, stay; null for none.</summary>
    public PackingPlan? Kept { get; init; }
}
