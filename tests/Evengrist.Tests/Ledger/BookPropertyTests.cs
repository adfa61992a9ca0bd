using CsCheck;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Ledger;

/// <summary>After any sequence of facts, late and corrected ones among them: in − out = stock to the gram, for every place and for the plant.</summary>
public sealed class BookPropertyTests
{
    private static readonly string[] Stores = ["B1", "B2", "B3"];

    private static readonly Gen<Step[]> Steps = Gen.Select(
        Gen.Int[0, 9], Gen.Int[0, 2], Gen.Int[0, 2], Gen.Long[1, 90_000_000], Gen.Int[0, 600], Gen.Int[0, 120],
        (what, from, to, grams, minute, length) => new Step(what, from, to, grams, minute, length)).Array[5, 60];

    [Fact]
    public void Append_AnySequence_BalancesToTheGram() => Steps.Sample(
        steps =>
        {
            var mill = Play(steps);
            var book = mill.Book;
            long all = 0;
            foreach (var place in book.Places)
            {
                var moved = book.Movements.Where((_, i) => book.Counts(i)).ToArray();
                var stock = moved.Where(m => m.To == place.Id).Sum(m => m.Mass.Grams) - moved.Where(m => m.From == place.Id).Sum(m => m.Mass.Grams);
                Assert.Equal(stock, book.StockOf(place.Id).Grams);
                Assert.Equal(stock, book.StockOf(place.Id, PosedMill.Hour(10_000)).Grams);
                var (into, outOf) = book.ThroughputOf(place.Id, PosedMill.Hour(10_000));
                Assert.Equal(stock, (into - outOf).Grams);
                all += stock;
                if (place.Kind == PlaceKind.Bin)
                {
                    Assert.True(stock >= 0);
                    foreach (var moment in moved.SelectMany(m => new[] { m.At, m.Until }))
                    {
                        // A gram for each flow that runs at the moment: an even rate cuts grams.
                        var running = moved.Count(m => m.IsFlow && m.At < moment && m.Until > moment && (m.From == place.Id || m.To == place.Id));
                        Assert.True(book.StockOf(place.Id, moment).Grams >= (running == 0 ? 0 : -2 - running), $"{place.Code} at {moment}: {book.StockOf(place.Id, moment)}, {running} running");
                    }
                }
            }

            Assert.Equal(0, all);
        },
        iter: 300);

    [Fact]
    public void Reckoning_AnySequence_HoldsWhatTheLedgerHoldsAndLateFactsChangeNothing() => Steps.Sample(
        steps =>
        {
            foreach (var outflow in Enum.GetValues<Outflow>())
            {
                var following = default(Reckoning);
                var mill = Play(steps, after: m => (following ??= new Reckoning(m.Book, outflow)).CatchUp());
                var anew = mill.Reckon(outflow);
                var end = PosedMill.Hour(10_000);
                foreach (var code in Stores)
                {
                    var layers = anew.At(end).ContentOf(mill.Id(code));
                    Assert.Equal(mill.Book.StockOf(mill.Id(code)).Grams, layers.Sum(l => l.Grams), 5.0);
                    Assert.Equal(layers.Sum(l => l.Grams), following?.At(end).ContentOf(mill.Id(code)).Sum(l => l.Grams) ?? 0, 1e-3);
                }

                Assert.Equal(anew.Parcels.Count, following?.Parcels.Count ?? 0);
                for (var i = 0; i < anew.Parcels.Count; i++)
                {
                    var shares = anew.Parcels.Rows.SharesOf(i);
                    Assert.True(shares.IsEmpty || Math.Abs(shares.ToArray().Sum() - 1) < 1e-9);
                    Assert.True(anew.Parcels.Rows.ParentsOf(i).SequenceEqual(following!.Parcels.Rows.ParentsOf(i)));
                }
            }
        },
        iter: 150);

    [Fact]
    public void Append_Refused_LeavesTheBookAsItWas()
    {
        var mill = Play([]);
        mill.Move("FARM", "T1", 10, 0).Move("T1", "B1", 10, 1);
        var (last, movements) = (mill.Book.Last, mill.Book.Movements.Count);
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record(
            new Move("a", "B1", "B2", Mass.FromTonnes(4), PosedMill.Hour(2)),
            new Move("b", "B1", "B2", Mass.FromTonnes(7), PosedMill.Hour(3))));
        Assert.Equal((LedgerRule.WouldOverdraw, "B1", PosedMill.Hour(3), Mass.FromTonnes(1)), (refusal.Rule, refusal.Place, refusal.At, refusal.By));
        Assert.Equal((last, movements), (mill.Book.Last, mill.Book.Movements.Count));
        Assert.Equal(Mass.FromTonnes(10), mill.Book.StockOf(mill.Id("B1")));
        Assert.Equal(Mass.Zero, mill.Book.StockOf(mill.Id("B2")));
    }

    // A step that the ledger refuses is left out, as at a desk.
    private static PosedMill Play(Step[] steps, Action<PosedMill>? after = null)
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "FARM").Open(PlaceKind.Truck, "T1").Open(PlaceKind.Waste, "WASTE");
        foreach (var store in Stores)
        {
            mill.Open(new OpenPlace(store, store, PlaceKind.Bin) { Capacity = Mass.FromTonnes(500) });
        }

        mill.Connect("B1", "B2").Connect("B2", "B3").Connect("B3", "B1").Connect("B2", "B1");
        foreach (var step in steps)
        {
            try
            {
                step.Do(mill);
                after?.Invoke(mill);
            }
            catch (LedgerRefusal)
            {
                // Refused is fine here; what counts is that the book still balances.
            }
        }

        return mill;
    }

    private sealed record Step(int What, int From, int To, long Grams, int Minute, int Length)
    {
        public void Do(PosedMill mill)
        {
            var at = PosedMill.Hour(Minute / 60.0);
            var until = What % 2 == 0 ? at : at + Duration.FromMinutes(Length);
            var mass = Mass.FromGrams(Grams);
            switch (What)
            {
                case < 4:
                    mill.Record(
                        new Move(mill.Key(), "FARM", "T1", mass, at),
                        new Move(mill.Key(), "T1", Stores[To], mass, at, until));
                    break;
                case < 7:
                    mill.Record(new Move(mill.Key(), Stores[From], Stores[To], mass, at, until));
                    break;
                case < 8:
                    mill.Record(new Move(mill.Key(), Stores[From], "WASTE", mass, at, until));
                    break;
                default:
                    var earlier = mill.Book.Movements.Count == 0 ? default : mill.Book.Movements[Minute % mill.Book.Movements.Count];
                    if (earlier.Id.Value > 0)
                    {
                        mill.Record(new Move(mill.Key(), mill.Book[earlier.From].Code, mill.Book[earlier.To].Code, What == 8 ? Mass.Zero : mass, earlier.At, earlier.Until)
                        {
                            Corrects = earlier.Id, Note = "mistyped",
                        });
                    }

                    break;
            }
        }
    }
}
