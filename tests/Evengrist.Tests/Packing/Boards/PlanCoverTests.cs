using Evengrist.Packing.Boards;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Products;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Packing.Boards;

/// <summary>What a plan in force still packs of an order; cases are derived by hand.</summary>
public sealed class PlanCoverTests
{
    private static readonly Instant Start = Instant.FromUtc(2026, 1, 14, 12, 0);
    private static readonly Product Bag = new("WB-25", "Bread flour", "WB", PackKind.Bag, 25_000) { PerPallet = 40, PackedAs = "40 × 25 kg", Label = new("1", "A", Start) };

    private static PackingOrder Order(decimal tonnes) => new("a", "C1", "WB-25", 1000 * tonnes, OrderUnit.Kilograms, Start + Duration.FromHours(9), Start - Duration.FromHours(4));

    private static PackingPlan Plan(long tonnes, string product = "WB-25") =>
        new(Start, [new("A", product, "L1", Start, Start + Duration.FromHours(4), tonnes * 1_000_000, Start + Duration.FromHours(9))], None, None, None, true, 0, "", 0);

    private static PlanFigures None => new(0, 0, 0, 0, 0, 0, []);

    private static OrderStanding Now(decimal ordered, decimal packedBefore, decimal packedSince, PackingPlan plan, int hours = 1)
    {
        OrderStanding Stand(decimal packed) => new(Order(ordered), Bag, Order(ordered).Wanted(Bag), Mass.FromTonnes(packed), Mass.Zero, true);
        return PlanCover.Of(plan, [Stand(packedBefore)], [Stand(packedBefore + packedSince)], Start + Duration.FromHours(hours)).Single();
    }

    [Theory]
    [InlineData(10, 2, 0, 0)] // 8 t were left and are planned
    [InlineData(10, 2, 3, 0)] // packed as planned
    [InlineData(15, 2, 0, 5)] // raised by 5 t
    [InlineData(15, 2, 3, 5)] // the same while the run goes on
    [InlineData(15, 2, 9, 4)] // one tonne more was packed than planned
    [InlineData(7, 2, 0, 0)] // lowered: nothing is missing
    public void Of_AQuantityRaisedAfterPlanning_IsNotPlanned(int ordered, int before, int since, int notPlanned)
    {
        var standing = Now(ordered, before, since, Plan(8));
        Assert.Equal((notPlanned, notPlanned > 0), ((int)standing.NotPlanned.Tonnes, standing.IsPlannedShort));
    }

    [Fact]
    public void Of_RunsThatEndedOrPackAnother_CoverNothing()
    {
        Assert.Equal(Mass.Zero, Now(10, 2, 0, Plan(8), hours: 3).NotPlanned);
        Assert.Equal(Mass.FromTonnes(8), Now(10, 2, 0, Plan(8), hours: 4).NotPlanned);
        Assert.Equal(Mass.FromTonnes(8), Now(10, 2, 0, Plan(8, "AP-25")).NotPlanned);
        Assert.Equal(Mass.Zero, Now(10, 2, 8, Plan(8), hours: 5).NotPlanned);
    }
}
