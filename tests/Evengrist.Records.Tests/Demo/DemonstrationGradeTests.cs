using Evengrist.Demo;
using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;
using Evengrist.Records.Tests.Stores;

namespace Evengrist.Records.Tests.Demo;

/// <summary>Grade factors and house classes of the demonstration; invented, held to what docs/demonstration.md says of them.</summary>
[Collection(DemonstrationYearCollection.Name)]
public sealed class DemonstrationGradeTests(DemonstrationYear year)
{
    private Place[] Harvest => [.. year.Book.OfKind(PlaceKind.Truck).Where(t => Find(t, Property.Dockage) is not null)];

    [Fact]
    public void Factors_OfTheHarvest_StandOnAboutOneTruckInFour() =>
        Assert.InRange(Harvest.Count(t => Find(t, Property.Damaged) is not null) / (double)Harvest.Length, 0.22, 0.28);

    [Fact]
    public void Factors_ByDistrict_AreShrunkenWhereDryAndDamagedWhereWet()
    {
        double Mean(string district, Property what) => Harvest.Where(t => Field(t) == district).Select(t => Find(t, what)).OfType<decimal>().Average(v => (double)v);
        Assert.True(Mean("Scarrow Rim", Property.ShrunkenAndBroken) > 2 * Mean("Northledge", Property.ShrunkenAndBroken));
        Assert.True(Mean("Lowmere", Property.Damaged) > 2 * Mean("Northledge", Property.Damaged));
    }

    [Fact]
    public void Factors_OfEveryTruckPicked_CanBeGraded() =>
        Assert.All(Harvest.Where(t => Find(t, Property.Damaged) is not null), t =>
        {
            var house = HouseClasses.All.Single(h => h.Code == t.Material);
            var findings = year.Book.ReadingsOn(t.Id).Where(r => r.What is not (Property.GrossWeight or Property.TareWeight)).GroupBy(r => r.What).Select(g => Finding.Of(g.Last())).ToArray();
            Assert.IsType<Graded>(GradeModel.Grade(house.ToStandard(), new GradeSample { Findings = findings }));
            // Spring wheat's subclass is not sorted; its limits do not hang on it.
            Assert.IsType<Graded>(GradeModel.Grade(Standards.All[0], new GradeSample { Class = house.OfficialClass, Findings = findings, TakeAsNone = true }));
        });

    [Fact]
    public void HouseClasses_Loaded_ReadBackTheSame()
    {
        Assert.All(HouseClasses.All, h => Assert.Empty(h.Faults()));
        using var site = new TestSite(Store.Sqlite);
        using var mill = site.Open();
        foreach (var house in HouseClasses.All)
        {
            mill.Papers(HouseClassJson.Kind).Keep(house.Code, house.Version, HouseClassJson.Write(house), "Ines Calloway");
        }

        Assert.Equal(HouseClasses.All.Select(HouseClassJson.Write).Order(StringComparer.Ordinal), mill.Papers(HouseClassJson.Kind).All().Select(p => p.Json).Order(StringComparer.Ordinal));
    }

    private decimal? Find(Place truck, Property what) => year.Book.ReadingsOn(truck.Id).LastOrDefault(r => r.What == what)?.Value;

    private string Field(Place truck) => year.Book.MovementsOf(truck.Id).Select(i => year.Book.Movements[i]).Where(m => m.To == truck.Id).Select(m => year.Book[m.From].Of).Select(of => of.Split(['·', ','])[^1].Trim()).FirstOrDefault() ?? "";
}
