using Evengrist.Ledger;
using Evengrist.Packing.Codes;
using Evengrist.Quantities;
using Evengrist.Records.Packing;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Packing;

public sealed class UnitNumbersTests
{
    [Theory, OnSqlite, OnPostgres]
    public async Task Give_TwoAtOnceAndAfterReopening_EachNumberOnceAndEachPalletItsOwn(Store store)
    {
        using var site = new TestSite(store);
        Sscc[] numbers;
        using (Mill mill = site.Open(), other = site.Open())
        {
            mill.Record([new OpenPlace("l", "L1", PlaceKind.PackingLine), .. Pallets(1, 40)], "Ada", "test");
            Assert.Contains("No company prefix is kept", UnitNumbers.Give(mill, "P-1", "Ada").Refused, StringComparison.Ordinal);
            KeepUnitNumbering.Keep(mill, new UnitNumbering("9521234") { First = 42 }, "Ada");
            Assert.Contains("There is no pallet or load P-99", UnitNumbers.Give(mill, "P-99", "Ada").Refused, StringComparison.Ordinal);
            Assert.Contains("There is no pallet or load L1", UnitNumbers.Give(mill, "L1", "Ada").Refused, StringComparison.Ordinal);

            // Two programs on the same records, at once, and both ask for the same twenty pallets as well as for their own.
            var (one, two) = (Task.Run(() => Given(mill, [.. Enumerable.Range(1, 30)])), Task.Run(() => Given(other, [.. Enumerable.Range(11, 30).Reverse()])));
            var (first, second) = (await one, await two);
            numbers = [.. Enumerable.Range(1, 40).Select(n => UnitNumbers.Of(mill, $"P-{n}")!)];
            Assert.Equal(40, numbers.Distinct().Count());
            Assert.Equal(numbers[..30], first);
            Assert.Equal(numbers[10..].Reverse(), second);
            Assert.All(numbers, n => Assert.StartsWith("0952123400000", n.Digits, StringComparison.Ordinal));
            Assert.Contains("095212340000000426", numbers.Select(n => n.Digits)); // SSCC of serial 42: worked case of docs/model/codes.md
        }

        using var reopened = site.Open();
        Assert.Equal(numbers[4], UnitNumbers.Give(reopened, "p-5", "Ben").Number);
        Assert.Equal("P-5", UnitNumbers.UnitOf(reopened, numbers[4]));
        Assert.Equal(40, UnitNumbers.All(reopened).Count);
        KeepUnitNumbering.Keep(reopened, new UnitNumbering("9521234", 3), "Ada");
        reopened.Record([new OpenPlace("p41", "P-41", PlaceKind.Pallet)], "Ada", "test");
        Assert.Equal("395212340000000014", UnitNumbers.Give(reopened, "P-41", "Ada").Number!.Digits); // derived: 3 9521234 000000001, weights 3 and 1: 4
        Assert.Equal("P-5", UnitNumbers.UnitOf(reopened, numbers[4]));
    }

    [Theory, OnSqlite]
    public void Of_ScannedTexts_LeadToPalletAndLotAndSayWhatContradicts(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var morning = SmallMill.Morning + Duration.FromHours(6);
        mill.Record([new OpenPlace("l", "L1", PlaceKind.PackingLine), new OpenPlace("g", "GAIN", PlaceKind.Gain), new OpenPlace("c", "C5", PlaceKind.Customer), .. Pallets(1, 2),
            new Move("m0", "GAIN", "L1", Mass.FromTonnes(2), morning), new Move("m1", "L1", "P-1", Mass.FromTonnes(1), morning), new Move("m2", "L1", "P-2", Mass.FromTonnes(1), morning)], "Ada", "test");
        KeepUnitNumbering.Keep(mill, new UnitNumbering("9521234"), "Ada");
        var number = UnitNumbers.Give(mill, "P-1", "Ada").Number!;
        var later = morning + Duration.FromHours(1);

        var found = ScannedPlaces.Of(mill, new ScannedKeys("x") { Unit = number, Lot = "WB-260702", Count = 39, NetKilograms = 25 }, later);
        var unit = Assert.Single(found.Units);
        Assert.Equal(("P-1", "WB-260701", 1000m), (unit.Place.Code, unit.Lot, unit.Packed.Kilograms));
        Assert.Collection(found.Contradictions, c => Assert.Contains("by the ledger P-1 is of lot WB-260701", c, StringComparison.Ordinal), c => Assert.Contains("39 × 25 kg", c, StringComparison.Ordinal));
        Assert.Contains("There is no lot WB-260702", Assert.Single(found.Unknown), StringComparison.Ordinal);

        Assert.Equal(["P-1", "P-2"], ScannedPlaces.Of(mill, new ScannedKeys("wb-260701") { Own = "wb-260701" }, later).Reached);
        Assert.Equal("L1", ScannedPlaces.Of(mill, new ScannedKeys("l1") { Own = "l1" }, later).Place!.Code);
        Assert.False(ScannedPlaces.Of(mill, new ScannedKeys("P-77") { Own = "P-77" }, later).IsFound);
        Assert.True(Sscc.TryParse("095212340000000426", out var stranger, out _));
        Assert.Contains("No pallet of this mill has the number", Assert.Single(ScannedPlaces.Of(mill, new ScannedKeys("x") { Unit = stranger }, later).Unknown), StringComparison.Ordinal);

        UnitScan.Keep(mill, "P-1", new UnitScan(later, "Ada", "x"));
        UnitScan.Keep(mill, "p-1", new UnitScan(later + Duration.FromMinutes(2), "Ben", "x"));
        Assert.Equal(["Ada", "Ben"], UnitScan.Of(mill, "P-1").Select(s => s.By));
    }

    private static IEnumerable<Draft> Pallets(int first, int count) => Enumerable.Range(first, count).Select(n => new OpenPlace($"p{n}", $"P-{n}", PlaceKind.Pallet, "40 × 25 kg", "WB"));

    private static Sscc[] Given(Mill mill, int[] pallets) => [.. pallets.Select(n => UnitNumbers.Give(mill, $"P-{n}", "Ada").Number!)];
}
