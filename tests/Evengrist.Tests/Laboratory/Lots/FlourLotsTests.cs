using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Laboratory.Lots;

public sealed class FlourLotsTests
{
    [Fact]
    public void Lots_OfThreeShifts_HoldWhatWasPackedInThem()
    {
        var book = LotMill.Open().Book;
        var lots = LotMill.Lots(LotMill.ThreeShifts).Of(book, LotMill.Day, LotMill.Day);
        Assert.Equal([("C1-250915-3", "P5"), ("WB-250915-1", "P1 P2"), ("WB-250915-2", "P3"), ("WB-250915-3", "P4")], lots.Select(l => (l.Code, string.Join(" ", l.Packages.Select(p => p.Place.Code)))));
        Assert.Equal((LotMill.At(8), LotMill.At(16)), (lots[2].From, lots[2].Until));
        Assert.Equal(Mass.FromTonnes(5m), lots.Aggregate(Mass.Zero, (sum, l) => sum + l.Mass)); // every package is in one lot, and in one alone
    }

    [Fact]
    public void Lots_OfOneADay_HaveNoPartInTheirCode()
    {
        var lots = LotMill.Lots(ReleaseRules.Start).Of(LotMill.Open().Book, LotMill.Day, LotMill.Day);
        Assert.Equal(["C1-250915", "WB-250915"], lots.Select(l => l.Code));
        Assert.Equal(4, lots[1].Packages.Count);
    }

    [Fact]
    public void Find_ByCode_IsTheSameLotAndNoOther()
    {
        var (book, lots) = (LotMill.Open().Book, LotMill.Lots(LotMill.ThreeShifts));
        Assert.Equal("P3", Assert.Single(lots.Find(book, " wb-250915-2 ")!.Packages).Place.Code);
        Assert.All(new[] { "", "WB", "WB-250915", "WB-250915-9", "WB-259999-1", "XX-250915-1", "WB-250916-1", "-", "a-b-c" }, code => Assert.Null(lots.Find(book, code)));
    }

    [Fact]
    public void Products_NamedInTheRules_AloneMakeLots() =>
        Assert.Equal("WB", Assert.Single(LotMill.Lots(ReleaseRules.Start with { Products = ["wb"] }).Of(LotMill.Open().Book, LotMill.Day, LotMill.Day)).Flour);

    [Fact]
    public void Package_ToppedUpLater_StaysInTheLotItWasBegunIn()
    {
        var mill = LotMill.Open().Move("L1", "P1", 0.1m, LotMill.Hour(17));
        var lots = LotMill.Lots(LotMill.ThreeShifts).Of(mill.Book, LotMill.Day, LotMill.Day);
        Assert.Equal("WB-250915-1", Assert.Single(lots, l => l.Packages.Any(p => p.Place.Code == "P1")).Code);
    }

    [Fact]
    public void Stand_OfAPackage_SaysWhereItIs()
    {
        var mill = LotMill.Open().Move("P1", "BAKERY", 1, LotMill.Hour(30));
        mill.Record(new Happen(mill.Key(), "P2", LotMill.At(28), HappeningKind.Held, "ash"));
        var lot = LotMill.Lots(LotMill.ThreeShifts).Find(mill.Book, "WB-250915-1")!;
        var stands = PackageStand.Of(mill.Book, lot, LotMill.At(40));
        Assert.Equal((false, "BAKERY", null), (stands[0].IsHere, stands[0].GoneTo?.Code, stands[0].Hold?.Words));
        Assert.Equal((true, null, "ash"), (stands[1].IsHere, stands[1].GoneTo?.Code, stands[1].Hold?.Words));
        Assert.All(PackageStand.Of(mill.Book, lot, LotMill.At(20)), s => Assert.True(s is { IsHere: true, Hold: null, GoneTo: null }));
        Assert.Equal("P1", Assert.Single(PackageStand.Of(mill.Book, lot, LotMill.At(1))).Package.Place.Code);
    }

    [Theory]
    [InlineData("""{ "partsOfDay": 0, "lagMinutes": 0, "persons": [] }""", "1 to 24 parts")]
    [InlineData("""{ "partsOfDay": 3, "lagMinutes": -1, "persons": [] }""", "0 to 1440")]
    [InlineData("""{ "partsOfDay": 3, "lagMinutes": 0, "persons": [ "" ] }""", "is empty")]
    [InlineData("""{ "partsOfDay": 3, "lagMinutes": 0, "persons": [], "policy": 1 }""", "above 0.5 and below 1")]
    [InlineData("""{ "partsOfDay": 3, "lagMinutes": 0 }""", "persons")]
    [InlineData("null", "read null")]
    public void Rules_ThatCannotBe_NameTheFault(string json, string says)
    {
        Assert.False(ReleaseRules.TryRead(json, out _, out var faults));
        Assert.Contains(faults, f => f.Contains(says, StringComparison.Ordinal));
    }

    [Fact]
    public void Rules_ComeBackFromJson_AndKnowWhoMay()
    {
        Assert.True(ReleaseRules.TryRead(ReleaseRules.Write(LotMill.ThreeShifts with { UnitMethods = ["NIR"] }), out var read, out _));
        Assert.Equal((3, 120, "NIR"), (read.PartsOfDay, read.LagMinutes, Assert.Single(read.UnitMethods)));
        Assert.True(read.MayDecide(" ada "));
        Assert.False(read.MayDecide("Ben"));
        Assert.False(ReleaseRules.Start.MayDecide("Ada"));
    }
}
