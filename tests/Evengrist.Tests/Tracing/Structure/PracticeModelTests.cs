using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing;
using Evengrist.Tracing.Structure;
using NodaTime;

namespace Evengrist.Tests.Tracing.Structure;

/// <summary>Today's practice from the ledger agrees truck by truck with the forward trace.</summary>
public sealed class PracticeModelTests
{
    [Theory]
    [InlineData(0)]
    [InlineData(50)]
    public void Practice_EveryTruck_IsWhatItsReachSays(int kilograms)
    {
        var mill = Mill();
        var tracer = Tracer.Over(mill.Book);
        var newest = mill.Book.Newest!.Value;
        var question = new PracticeQuestion(Instant.FromUnixTimeTicks(0), newest + Duration.FromDays(1), newest) { Threshold = Mass.FromKilograms(kilograms) };
        var practice = PracticeModel.Answer(mill.Book, tracer, question);
        Assert.Equal(mill.Book.OfKind(PlaceKind.Truck).Count(), practice.TrucksInSpan);
        Assert.Equal((3, 1), (practice.Trucks.Count, practice.NotPackedYet));
        Assert.Equal(36_000, practice.PackagesKilograms, 1e-6);
        Assert.False(practice.IsSample);
        Assert.Equal(0, practice.StandardError);
        foreach (var truck in practice.Trucks)
        {
            var packages = tracer.Reach(new TraceQuestion(truck.Truck.Code) { Threshold = question.Threshold }).Packages.Where(p => p.Place.Kind != PlaceKind.ReworkTote).ToArray();
            Assert.Equal(packages.Sum(p => (double)p.Mass.Kilograms), truck.RecallUnion, 1e-6);
            Assert.Equal(packages.Length, truck.Packages);
            for (var h = 0; h < practice.Outflows.Count; h++)
            {
                Assert.Equal(packages.Where(p => p.Grams.Each[h] > question.Threshold.Grams).Sum(p => (double)p.Mass.Kilograms), truck.Recall[h], 1e-6);
            }
        }

        // By hand, first in first out: of the 30 t drawn from E1 the first 25 are T1, so T1 is in the flour of the first five sixths (32.9 of 39.5 t), T2 in the rest; T3 is in all.
        var fifo = practice.Trucks.ToDictionary(t => t.Truck.Code, t => t.Recall[0]);
        Assert.Equal((36_000, 9_000, 36_000), (fifo["T1"], fifo["T2"], fifo["T3"]));
        Assert.Equal(practice.Trucks.Max(t => t.RecallUnion), practice.Union.Worst);
        Assert.True(practice.Each.All(e => e.Worst <= practice.Union.Worst));
    }

    [Fact]
    public void Practice_OfAPart_SaysSoAndCarriesItsError()
    {
        var mill = Mill();
        var newest = mill.Book.Newest!.Value;
        var practice = PracticeModel.Answer(mill.Book, Tracer.Over(mill.Book), new PracticeQuestion(Instant.FromUnixTimeTicks(0), newest, newest) { MostTraced = 2 });
        Assert.Equal((2, 4, true), (practice.Traced, practice.TrucksInSpan, practice.IsSample));

        // Trucks 1 and 3 of four, 36 t each under first in first out; under any, by the formula s/√n·√(1 − n/N).
        var sizes = practice.Trucks.Select(t => t.RecallUnion).ToArray();
        Assert.Equal(Math.Abs(sizes[0] - sizes[1]) / Math.Sqrt(2) / Math.Sqrt(2) * Math.Sqrt(0.5), practice.StandardError, 1e-6);
        Assert.Throws<ArgumentException>(() => new PracticeModel(mill.Book, new PracticeQuestion(newest, newest, newest)));
    }

    private static PosedMill Mill()
    {
        var mill = new PosedMill().Open(PlaceKind.Field, "F1", "F2", "F3", "F4").Open(PlaceKind.Truck, "T1", "T2", "T3", "T4").Open(PlaceKind.Bin, "E1", "E2", "E3").Open(PlaceKind.MixLine, "GRIST")
            .Open(PlaceKind.MillUnit, "MILL").Open(PlaceKind.FlourBin, "FLOUR", "FEED").Open(PlaceKind.Pallet, "P1", "P2", "P3", "P4")
            .Connect("E1", "GRIST").Connect("E2", "GRIST").Connect("GRIST", "MILL").Connect("MILL", "FLOUR").Connect("MILL", "FEED");
        mill.Move("F1", "T1", 25, 0).Move("F2", "T2", 24, 0.1).Move("F3", "T3", 40, 0.2).Move("F4", "T4", 20, 0.3)
            .Move("T1", "E1", 25, 1).Move("T2", "E1", 24, 1).Move("T3", "E2", 40, 1).Move("T4", "E3", 20, 1)
            .Move("E1", "GRIST", 30, 2, 4).Move("E2", "GRIST", 20, 2, 4).Move("GRIST", "MILL", 50, 2, 4).Move("MILL", "FLOUR", 39.5m, 2, 4).Move("MILL", "FEED", 10.5m, 2, 4);
        return mill.Move("FLOUR", "P1", 9, 5).Move("FLOUR", "P2", 9, 6).Move("FLOUR", "P3", 9, 7).Move("FLOUR", "P4", 9, 8);
    }
}
