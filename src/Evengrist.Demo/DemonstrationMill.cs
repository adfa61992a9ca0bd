using System.Collections.Concurrent;
using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Records;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The demonstration mill: an invented mill's crop year as facts, the same for the same seed.</summary>
public static class DemonstrationMill
{
    /// <summary>The seed of the demonstration as it is shown.</summary>
    public const ulong Seed = 20250701;

    /// <summary>What the mill says about itself.</summary>
    public static MillSettings Settings { get; } = new()
    {
        Name = "Sennorby Mill", ZoneId = MillCalendar.ZoneId, DayStart = new LocalTime(6, 0), Currency = "USD", IsDemonstration = true, OpensAt = MillCalendar.OpeningMoment,
    };

    /// <summary>Everything recorded in the year, in the order of recording.</summary>
    public static IEnumerable<DemoBatch> Drafts(ulong seed = Seed) => new Year(seed).Batches();

    /// <summary>The same with the hidden truth, which is complete once the batches have been gone through. For tests.</summary>
    public static (IEnumerable<DemoBatch> Batches, Truth Truth) WithTruth(ulong seed = Seed)
    {
        var year = new Year(seed);
        return (year.Batches(), year.Truth);
    }

    /// <summary>Records the demonstration into an empty mill, through the use case a person's entries go through.</summary>
    /// <remarks>Stopped half-way it can be called again: what is recorded already is known by its keys.</remarks>
    /// <exception cref="InvalidOperationException">The mill holds facts that are not the demonstration's.</exception>
    public static void Load(Mill mill, Action<DemoProgress>? progress = null, ulong seed = Seed)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (!mill.Settings.IsDemonstration && mill.Ask(v => v.Book.Last.Value) > 0)
        {
            throw new InvalidOperationException("This mill holds facts of its own. Load the demonstration into an empty one.");
        }

        mill.Set(Settings);
        foreach (var terms in HouseContracts.All)
        {
            mill.Contracts.Keep(terms.Code, terms.Version, TermsJson.Write(terms), "Ines Calloway");
        }

        foreach (var house in HouseClasses.All)
        {
            mill.Papers(HouseClassJson.Kind).Keep(house.Code, house.Version, HouseClassJson.Write(house), "Ines Calloway");
        }

        SamplingDesk.KeepPapers(mill);
        SeasonBooks.KeepPapers(mill);
        HouseRulesShelf.Keep(mill, HousePolicy.Rules, "Ines Calloway");
        TradeBooks.Keep(mill);
        HouseBins.Keep(mill, new BinPlan());
        HouseFlowSheets.Keep(mill);
        HouseProducts.Keep(mill);
        var (facts, days) = (0, Period.DaysBetween(MillCalendar.FirstDay, MillCalendar.LastDay) + 1);
        var year = new Year(seed);
        foreach (var batch in Ahead(year.Batches()))
        {
            mill.Record(batch.Drafts, batch.By, batch.Source, batch.Recorded);
            facts += batch.Drafts.Count;
            var day = MillCalendar.MillingDay(batch.Recorded - Duration.FromHours(1));
            progress?.Invoke(new DemoProgress(day, Math.Clamp((Period.DaysBetween(MillCalendar.FirstDay, day) + 1) / (double)days, 0, 1), facts));
        }

        foreach (var booking in year.Bookings)
        {
            Bookings.Keep(mill, booking, "Ines Calloway");
        }

        year.Sheets.KeepPapers(mill);
        StreamBooks.Keep(mill);
        MillTestBooks.Keep(mill, seed);
        LabBooks.Keep(mill, seed);
        LabBooks.Jars(mill);
        Payments.Record(mill);
        ReleaseBooks.Keep(mill, year.Truth, seed);
        ChartFreezes.Keep(mill);
        ContentBooks.Keep(mill, seed);
        DispatchBooks.Keep(mill);
        HouseHall.Keep(mill);
        HouseOrders.Keep(mill);
        ReworkBooks.Keep(mill);
    }

    // The next batches are made on another thread while one is being recorded; their order stays.
    private static IEnumerable<DemoBatch> Ahead(IEnumerable<DemoBatch> batches)
    {
        using var stop = new CancellationTokenSource();
        using var made = new BlockingCollection<DemoBatch>(32);
        var making = Task.Run(() =>
        {
            try
            {
                foreach (var batch in batches)
                {
                    made.Add(batch, stop.Token);
                }
            }
            catch (OperationCanceledException)
            {
                // Whoever took the batches has stopped.
            }
            finally
            {
                made.CompleteAdding();
            }
        });
        try
        {
            foreach (var batch in made.GetConsumingEnumerable())
            {
                yield return batch;
            }

            making.GetAwaiter().GetResult();
        }
        finally
        {
            stop.Cancel();
            making.Wait();
        }
    }
}
