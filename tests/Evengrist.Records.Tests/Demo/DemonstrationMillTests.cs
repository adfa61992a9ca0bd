using Evengrist.Demo;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Tests.Demo;

/// <summary>The demonstration against its own plan (docs/demonstration.md; invented data).</summary>
[Collection(DemonstrationYearCollection.Name)]
public sealed class DemonstrationMillTests(DemonstrationYear year)
{
    [Fact]
    public void Drafts_SameSeed_SameBytes() => Assert.Equal(year.Hash, DemonstrationYear.HashOf(DemonstrationMill.Drafts()));

    [Fact]
    public void Drafts_OtherSeed_OtherBytes() => Assert.NotEqual(
        DemonstrationYear.HashOf(DemonstrationMill.Drafts(1).Take(30)), DemonstrationYear.HashOf(DemonstrationMill.Drafts(2).Take(30)));

    [Fact]
    public void Year_AllPlaces_SumsToNothingAndNoneBelowZero()
    {
        Assert.Equal(0, year.Book.Places.Sum(p => year.Book.StockOf(p.Id).Grams));
        Assert.DoesNotContain(year.Book.Places, p => p.Kind.Role() != PlaceRole.Source && year.Book.StockOf(p.Id) < Mass.Zero);
        Assert.DoesNotContain(year.Book.Places, p => p.Kind.Role() == PlaceRole.Junction && year.Book.StockOf(p.Id) != Mass.Zero);
    }

    [Fact]
    public void Year_Counts_InTheRangesAskedFor()
    {
        Assert.InRange(year.Book.OfKind(PlaceKind.Pallet).Count(), 100_000, 108_000);
        Assert.InRange(year.Book.Places.Count, 100_000, 120_000);
        Assert.InRange(year.Book.Movements.Count, 200_000, 450_000);
        Assert.InRange(year.Between(PlaceKind.Field, PlaceKind.Truck).Count(), 3_600, 3_780);
        Assert.InRange(year.Batches, 300, 1_000);
    }

    [Fact]
    public void Harvest_Days_FortyTwoWithAPeakOf112OnNineJuly()
    {
        var days = year.Between(PlaceKind.Field, PlaceKind.Truck).CountBy(m => m.At.Plus(Duration.FromHours(-6)).InUtc().Date).ToDictionary();
        Assert.Equal(42, days.Count);
        Assert.Equal((new LocalDate(2025, 7, 3), new LocalDate(2025, 8, 30)), (days.Keys.Min(), days.Keys.Max()));
        Assert.Equal(112, days[new LocalDate(2025, 7, 9)]);
        Assert.Equal(112, days.Values.Max());
        Assert.InRange(days.Values.Average(), 86, 90);
    }

    [Theory]
    [InlineData("Northledge", 41_000, 0.06)]
    [InlineData("Scarrow Rim", 9_500, 0.08)]
    [InlineData("Lowmere", 13_500, 0.10)]
    [InlineData("Talvin Bank", 17_000, 0.12)]
    [InlineData("High Brack", 15_000, 0.03)]
    public void Harvest_OfADistrict_NearThePlan(string district, double tonnes, double tolerance) => Assert.InRange(
        year.Book.OfKind(PlaceKind.Field).Where(f => f.Of.EndsWith(district, StringComparison.Ordinal)).Sum(f => year.Given(f)), tonnes * (1 - tolerance), tonnes * (1 + tolerance));

    [Fact]
    public void Year_Totals_NearThePlan()
    {
        Assert.Equal(12_000, year.Book.OfKind(PlaceKind.Opening).Sum(o => year.Given(o)), 1e-6);
        Assert.InRange(year.Book.OfKind(PlaceKind.Field).Sum(f => year.Given(f)), 95_000, 97_000);
        var elevators = year.Book.OfKind(PlaceKind.Elevator).ToArray();
        Assert.InRange(elevators.Sum(e => year.Given(e, DemonstrationYear.PlanMorning)), 12_400, 14_300);
        Assert.InRange(elevators.Sum(e => year.Given(e)), 90_000, 92_500);
        Assert.InRange(year.Book.OfKind(PlaceKind.Bin).Sum(b => (double)year.Book.StockOf(b.Id).Tonnes), 10_800, 13_200);
        var ground = year.Between(PlaceKind.Bin, PlaceKind.MixLine).ToArray();
        Assert.InRange(ground.Sum(m => (double)m.Mass.Tonnes), 187_200 * 0.999, 187_200 * 1.001);
        Assert.InRange(ground.Where(m => m.Until <= DemonstrationYear.PlanMorning).Sum(m => (double)m.Mass.Tonnes), 38_900, 39_150);
    }

    [Theory]
    [InlineData("B01", 8_200)]
    [InlineData("B02", 9_100)]
    [InlineData("B03", 7_600)]
    [InlineData("B04", 8_800)]
    [InlineData("B05", 6_900)]
    [InlineData("B06", 5_200)]
    [InlineData("B07", 7_400)]
    [InlineData("B08", 6_100)]
    [InlineData("B09", 3_300)]
    [InlineData("B10", 4_500)]
    [InlineData("B11", 4_300)]
    [InlineData("B12", 3_900)]
    [InlineData("B13", 3_600)]
    [InlineData("B15", 1_100)]
    [InlineData("B16", 1_200)]
    [InlineData("B17", 0)]
    [InlineData("B18", 0)]
    [InlineData("B19", 0)]
    public void Bin_On15September_NearThePlan(string bin, double tonnes)
    {
        // Half a truck, and one per cent for what the belt weighers gave more or less than the mix sheets said.
        Assert.InRange(year.StockOn15September(bin), Math.Max(0, (tonnes * 0.99) - 15), (tonnes * 1.01) + (tonnes > 0 ? 15 : 0));
    }

    [Theory]
    [InlineData("B01", 11.8)]
    [InlineData("B02", 12.1)]
    [InlineData("B03", 12.5)]
    [InlineData("B04", 12.9)]
    [InlineData("B05", 13.9)]
    [InlineData("B06", 13.3)]
    [InlineData("B07", 11.0)]
    [InlineData("B08", 9.5)]
    [InlineData("B09", 10.1)]
    [InlineData("B10", 14.2)]
    [InlineData("B11", 14.6)]
    [InlineData("B12", 15.1)]
    [InlineData("B13", 13.0)]
    [InlineData("B14", 12.8)]
    [InlineData("B15", 12.4)]
    [InlineData("B16", 14.8)]
    public void Bin_TrueProteinOn15September_NearThePlan(string bin, double protein)
    {
        // What lies there if the first in was the first out.
        var trucks = year.Between(PlaceKind.Truck, PlaceKind.Pit).ToDictionary(m => (m.At, m.Mass), m => year.Book[m.From].Code);
        var id = year.Book.Named(bin).Id;
        var moves = year.Book.MovementsOf(id).Select(i => year.Book.Movements[i]).Where(m => m.Until <= DemonstrationYear.PlanMorning).ToArray();
        var gone = moves.Where(m => m.From == id).Sum(m => m.Mass.Grams);
        double grams = 0, sum = 0;
        foreach (var fill in moves.Where(m => m.To == id))
        {
            var left = Math.Max(0, fill.Mass.Grams - gone);
            gone = Math.Max(0, gone - fill.Mass.Grams);
            if (left > 0 && trucks.TryGetValue((fill.At, fill.Mass), out var truck))
            {
                grams += left;
                sum += left * year.Truth.Trucks[truck].Protein;
            }
        }

        Assert.InRange(sum / grams, protein - 0.35, protein + 0.35);
    }

    [Theory]
    [InlineData(Flour.WB, 11.9, 0.2)]
    [InlineData(Flour.AP, 10.6, 0.25)]
    [InlineData(Flour.HG, 13.4, 0.3)]
    [InlineData(Flour.PA, 8.7, 0.4)]
    [InlineData(Flour.WW, 12.7, 0.4)] // asked for: 12.4 at least, 13.0 aimed at
    public void Flour_TrueProteinOverTheYear_NearTheProductsAim(Flour flour, double protein, double tolerance) =>
        Assert.InRange(year.Truth.Flours.Where(f => f.Flour == flour).Average(f => f.Protein), protein - tolerance, protein + tolerance);

    [Fact]
    public void B14_On15September_HoldsTheSuspectTicketBetween412And300Tonnes()
    {
        var book = year.Book;
        var bin = book.Named("B14").Id;
        var layers = book.MovementsOf(bin).Select(i => book.Movements[i]).Where(m => m.Until <= DemonstrationYear.PlanMorning).ToArray();
        Assert.All(layers, m => Assert.Equal(bin, m.To));
        var suspect = book.MovementsOf(book.Named("25-0709-061").Id).Select(i => book.Movements[i]).ToArray();
        Assert.Equal("DS-2", book[suspect[0].From].Code);
        Assert.Equal(Mass.FromTonnes(26.34m), suspect[0].Mass);
        var at = Array.FindIndex(layers, m => m.Mass == Mass.FromTonnes(26.34m) && m.At == suspect[1].At);
        Assert.Equal(412_000_000, layers.Take(at).Sum(m => m.Mass.Grams));
        Assert.Equal(300_000_000, layers.Skip(at + 1).Sum(m => m.Mass.Grams));
    }

    [Fact]
    public void B14_DrawnAtSevenTonnesAnHour_ProvenEmptyWhenItIs()
    {
        var book = year.Book;
        var bin = book.Named("B14").Id;
        var draws = book.MovementsOf(bin).Select(i => book.Movements[i]).Where(m => m.From == bin && m.At < DemonstrationYear.PlanMorning + Duration.FromDays(6)).ToArray();
        Assert.Equal(DemonstrationYear.PlanMorning, draws[0].At);
        Assert.All(draws, d => Assert.Equal(7.0, (double)d.Mass.Tonnes / (d.Until - d.At).TotalHours, 1e-5));
        Assert.Equal(105.477, (draws[^1].Until - draws[0].At).TotalHours, 1e-3);
        Assert.Contains(book.HappeningsOn(bin), h => h.Kind == HappeningKind.ProvenEmpty && h.At > draws[^1].Until && h.At < draws[^1].Until + Duration.FromHours(1));
    }

    [Fact]
    public void Readings_AgainstTheTruth_DifferByTheInstrumentsError()
    {
        var errors = year.Truth.Trucks.Select(t => (double)year.Book.ReadingsOn(year.Book.Named(t.Key).Id).First(r => r.What == Property.Protein).Value - t.Value.Protein).ToArray();
        Assert.InRange(errors.Average(), -0.02, 0.02);
        Assert.InRange(Math.Sqrt(errors.Average(e => e * e)), 0.23, 0.27);
        var weights = year.Between(PlaceKind.Field, PlaceKind.Truck).Select(m => (double)m.Mass.Kilograms - year.Truth.Trucks[year.Book[m.To].Code].NetKilograms).ToArray();
        Assert.InRange(Math.Sqrt(weights.Average(e => e * e)), 9, 15);
    }
}
