using Evengrist.Ledger;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing.Bounds;

namespace Evengrist.Tests.Tracing.Bounds;

/// <summary>Stocks at moments of a long history, beside the ledger's own count. The history is invented.</summary>
public sealed class LevelsTests
{
    [Fact]
    public void Stock_AtAnyMomentOfALongHistory_IsAsCountedFromTheEnd_AndAsTheLedgerHasIt()
    {
        var random = new Random(7);
        var mill = new PosedMill().Open(PlaceKind.Opening, "A").Open(PlaceKind.Bin, "BIN").Open(PlaceKind.Waste, "C");
        for (var n = 0; n < 200; n++)
        {
            var hour = random.Next(400) / 4.0;
            mill.Move("A", "BIN", random.Next(1, 30), hour, random.Next(2) == 0 ? hour + random.Next(1, 8) : null);
        }

        mill.Move("A", "BIN", 4000, -1);
        for (var n = 0; n < 200; n++)
        {
            var hour = random.Next(400) / 4.0;
            mill.Move("BIN", "C", random.Next(1, 20), hour, random.Next(2) == 0 ? hour + random.Next(1, 30) : null);
        }

        var begin = PosedMill.Hour(10).ToMicros();
        foreach (var code in new[] { "BIN", "C" })
        {
            var id = mill.Id(code);
            var (summed, counted) = (new Levels(mill.Book, begin), new Levels(mill.Book, long.MaxValue));
            for (var quarter = 40; quarter < 540; quarter++)
            {
                var hour = quarter / 4.0 + (quarter % 3 == 0 ? 0.1 : 0);
                var at = PosedMill.Hour(hour).ToMicros();
                foreach (var whole in new[] { true, false })
                {
                    Assert.Equal(counted.Of(id.Value, at, whole), summed.Of(id.Value, at, whole), 1e-3);
                }

                if (code == "BIN")
                {
                    // The ledger cuts each flow under way to the gram; at most 400 are.
                    Assert.Equal(mill.Book.StockOf(id, PosedMill.Hour(hour)).Grams, summed.Of(id.Value, at, whole: true), 200.0);
                }
            }
        }
    }
}
