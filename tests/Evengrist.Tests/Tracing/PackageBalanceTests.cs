using Evengrist.Ledger;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;

namespace Evengrist.Tests.Tracing;

public sealed class PackageBalanceTests
{
    [Fact]
    public void Recovery_ExampleOfTheChecklist()
    {
        // Food safety recall plan checklist, content.ces.ncsu.edu: A 30 800 kg made, B 4 200 in stock, C 26 400 delivered, D 150 samples and waste: 99.84 %.
        var mill = new PosedMill().Open(PlaceKind.Opening, "O").Open(PlaceKind.FlourBin, "FB").Open(PlaceKind.BulkLoad, "ALL").Open(PlaceKind.Customer, "C").Open(PlaceKind.Waste, "W");
        mill.Move("O", "FB", 40, 0).Move("FB", "ALL", 30.8m, 1).Move("ALL", "C", 26.4m, 2).Move("ALL", "W", 0.15m, 3);
        var balance = PackageBalance.Of(mill.Book, [mill.Id("ALL")], PosedMill.Hour(4));
        Assert.Equal((30_800m, 26_400m, 150m), (balance.Made.Kilograms, balance.Shipped.Kilograms, balance.Used.Kilograms));
        Assert.Equal(100m, balance.EffectivenessPercent);
        Assert.Equal(99.84m, (balance with { Stock = Evengrist.Quantities.Mass.FromKilograms(4_200) }).EffectivenessPercent!.Value, 2);
        Assert.Null(PackageBalance.Of(mill.Book, [], PosedMill.Hour(4)).EffectivenessPercent);
    }
}
