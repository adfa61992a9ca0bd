using CsCheck;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class BalanceTests
{
    private static readonly (string From, string To)[] Ways =
        [("PIT", "LEG"), ("LEG", "B1"), ("LEG", "B2"), ("B1", "SHORT"), ("B2", "SHORT"), ("GAIN", "B1"), ("GAIN", "B2"), ("GAIN", "PIT")];

    // One step: a way, grams, an hour, how long it lasted, and whether it corrects an earlier movement instead.
    private static readonly Gen<(int Way, long Grams, int Hour, int Lasted, bool Corrects)> Step =
        Gen.Select(Gen.Int[0, Ways.Length - 1], Gen.Long[1, 400_000_000], Gen.Int[0, 400], Gen.Int[0, 5], Gen.Bool);

    [Theory, OnSqlite, OnPostgres]
    public void Reopen_AfterAnyBatches_EveryStockIsTheSameAndTheSumIsZero(Store store) =>
        Step.List[1, 8].List[1, 12].Sample(
            batches =>
            {
                using var site = new TestSite(store);
                Dictionary<(string, int), Mass> before;
                using (var mill = site.Open())
                {
                    mill.Record(SmallMill.Places, "Ada", "test");
                    for (var b = 0; b < batches.Count; b++)
                    {
                        TryRecord(mill, batches[b], b);
                    }

                    before = Stocks(mill);
                    Assert.Equal(Mass.Zero, mill.SumOfStocks());
                }

                using var again = site.Open();
                Assert.Equal(before, Stocks(again));
                Assert.Equal(Mass.Zero, again.SumOfStocks());
            },
            iter: store == Store.Sqlite ? 30 : 10, threads: 1);

    // Many of these batches break a rule; then nothing of them may be seen.
    private static void TryRecord(Mill mill, List<(int Way, long Grams, int Hour, int Lasted, bool Corrects)> steps, int batch)
    {
        var before = Stocks(mill);
        try
        {
            mill.Record(view => [.. steps.Select((s, n) => Draft(view.Book, s, $"{batch}-{n}"))], "Ada", "test");
        }
        catch (LedgerRefusal)
        {
            Assert.Equal(before, Stocks(mill));
        }
    }

    private static Move Draft(Book book, (int Way, long Grams, int Hour, int Lasted, bool Corrects) step, string key)
    {
        var at = SmallMill.Morning + Duration.FromHours(step.Hour);
        var (from, to) = Ways[step.Way];
        var corrects = step.Corrects && book.Movements.Count > 0 ? book.Movements[(int)(step.Grams % book.Movements.Count)].Id : (FactId?)null;
        return new Move(key, from, to, Mass.FromGrams(step.Grams), at, at + Duration.FromHours(step.Lasted)) { Corrects = corrects, Note = corrects is null ? null : "weighed again" };
    }

    private static Dictionary<(string, int), Mass> Stocks(Mill mill) => mill.Ask(view => (
        from place in view.Book.Places
        from hour in new[] { 3, 100, 250, 1000 }
        select ((place.Code, hour), view.Book.StockOf(place.Id, SmallMill.Morning + Duration.FromHours(hour)))).ToDictionary(s => s.Item1, s => s.Item2));
}
