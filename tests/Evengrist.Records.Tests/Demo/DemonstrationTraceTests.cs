using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Tracing;
using NodaTime;

namespace Evengrist.Records.Tests.Demo;

/// <summary>The recall case and the bag case (docs/model/tracing.md), asked of the demonstration year; figures and tolerances are theirs.</summary>
[Collection(DemonstrationYearCollection.Name)]
public sealed class DemonstrationTraceTests(DemonstrationYear year)
{
    private static readonly Belief[] PlugFlow = [new(Outflow.FirstInFirstOut, 1)];
    private static Tracer? tracer;

    private Tracer Tracer => tracer ??= new Tracer(year.Book, [new Reckoning(year.Book, Outflow.FirstInFirstOut)]);

    [Fact]
    public void Reach_OfTheSuspectTicket_IsTheRecallPosed()
    {
        var reach = Tracer.Reach(new TraceQuestion("25-0709-061") { AsOf = MillCalendar.OpeningMoment }, PlugFlow);
        var kilograms = reach.Packages.Where(p => p.Place.Kind == PlaceKind.Pallet && p.Place.Material == "WB").Select(p => p.Grams.Each[0] / 1000).ToArray();
        Assert.InRange(kilograms.Count(k => k > 50), 108, 110);
        Assert.InRange(kilograms.Count(k => k > 10), 179, 181);
        Assert.InRange(kilograms.Count(k => k > 1), 276, 278);
        Assert.InRange(kilograms.Sum(), 18_120, 18_220);
        Assert.InRange(kilograms.Where(k => k > 50).Sum() / kilograms.Sum(), 0.873, 0.883);
        Assert.InRange(kilograms.Max(), 262, 272);
        Assert.Equal(1, reach.AccountedFor[0], 1e-6);
        Assert.Contains(reach.Packages, p => p.Grams.Each[0] > 50_000 && p.Where is null);
    }

    [Fact]
    public void Roots_OfABagOf17September_AddToTheWhole()
    {
        var made = year.Between(PlaceKind.PackingLine, PlaceKind.Pallet).Where(m => m.At >= MillCalendar.At(new LocalDate(2025, 9, 17), 18)).MinBy(m => m.At);
        var roots = Tracer.Roots(new TraceQuestion(year.Book[made.To].Code), PlugFlow);
        Assert.Equal(1, roots.Roots.Where(r => r.IsGrain).Sum(r => r.GrainShare.Each[0]), 1e-3);
        Assert.Equal(1, roots.Roots.Sum(r => r.Share.Each[0]), 1e-3);
        Assert.Contains(roots.Roots, r => r.Origin.Kind == PlaceKind.Field && r.Truck is not null);
        Assert.Contains(roots.Roots, r => r.Origin.Kind == PlaceKind.Elevator);
        Assert.Contains(roots.Roots, r => r.Origin.Kind == PlaceKind.Water);
        Assert.Contains(roots.Roots, r => r.Origin.Kind == PlaceKind.AdditiveLot);
    }
}
