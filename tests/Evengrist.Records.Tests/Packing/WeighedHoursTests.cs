using Evengrist.Packing.NetContent;
using Evengrist.Packing.Products;
using Evengrist.Records.Packing;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Packing;

public sealed class WeighedHoursTests
{
    private static readonly Instant Ten = Instant.FromUtc(2026, 1, 31, 22, 0);

    [Theory, OnSqlite, OnPostgres]
    public void Keep_FilesThatOverlap_AddEachPackageOnceAndGiveItBack(Store store)
    {
        using var site = new TestSite(store);
        WeighedHour[] hours = [Hour("L1", 0, 500, 1), Hour("L1", 1, 500, 2), Hour("L2", 3, 40, 3)];
        using (var mill = site.Open())
        {
            Assert.Equal((1040, 0), WeighedHours.Keep(mill, hours, "Ada"));
            Assert.Equal((0, 1040), WeighedHours.Keep(mill, hours, "Ben"));
            var longer = hours[0] with { Packages = [.. hours[0].Packages.Skip(200), new(Ten + Duration.FromMinutes(59), 252_001, 1_800, true)] };
            Assert.Equal((1, 300), WeighedHours.Keep(mill, [longer], "Ada"));
        }

        using var reopened = site.Open();
        Assert.Equal(hours[1].Packages, WeighedHours.Find(reopened, "L1", "WB-25", hours[1].From)!.Packages);
        Assert.Equal(hours[0].Packages, WeighedHours.Find(reopened, "L1", "WB-25", Ten)!.Packages.SkipLast(1));
        Assert.Null(WeighedHours.Find(reopened, "L1", "WB-25", Ten - Duration.FromHours(1)));

        // The third hour lies in the next month of universal time.
        var all = WeighedHours.Within(reopened, Ten, Ten + Duration.FromHours(4));
        Assert.Equal([(500, 1), (500, 0)], all[("L1", "WB-25")].Select(h => (h.Count, h.Rejected)));
        Assert.Equal(hours[2].Passed.Average(p => p.NetGrams), Assert.Single(all[("L2", "WB-25")]).Mean, 1e-6);
        Assert.Single(WeighedHours.Within(reopened, Ten, Ten + Duration.FromHours(2) - Duration.FromSeconds(1)));
    }

    [Theory, OnSqlite]
    public void Stand_OfATareThatDrifted_SaysSinceWhenAndCorrects(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var product = new Product("WB-25", "White bread flour", "WB", PackKind.Bag, 25_000) { PerPallet = 40, TareGrams = 180 };
        Assert.Empty(Products.Keep(mill, product, "Ada").Faults);
        WeighedHours.Keep(mill, [.. Enumerable.Range(0, 6).Select(h => Hour("L1", h, 500, h))], "Ada");
        Assert.Empty(TareSamples.Keep(mill, new TareSample("wb-25", Ten - Duration.FromDays(2), [180, 181, 179, 180, 180]), "Ada", Ten));
        Assert.Empty(TareSamples.Keep(mill, new TareSample("WB-25", Ten + Duration.FromHours(2) + Duration.FromMinutes(30), [216, 215, 217, 216, 216], "new bags"), "Ada", Ten + Duration.FromDays(1)));
        Assert.Contains("lies in the future", Assert.Single(TareSamples.Keep(mill, new TareSample("WB-25", Ten, [216, 215, 217, 216, 216]), "Ada", Ten - Duration.FromDays(9))), StringComparison.Ordinal);

        var stand = Assert.Single(ContentStand.All(mill, new ContentOptions(NetRules.EU) { PricePerTonne = 700 }, Ten + Duration.FromHours(6)));
        Assert.True(stand.IsTareWrong);
        Assert.Equal(-36, stand.Correction, 1e-9);
        Assert.Equal(Ten + Duration.FromHours(2), stand.WrongSince);
        Assert.Equal(stand.Hours[0].Mean, stand.Corrected(stand.Hours[0]), 1e-9);
        Assert.Equal(stand.Hours[5].Mean - 36, stand.Corrected(stand.Hours[5]), 1e-9);
        Assert.Equal(30, stand.Sample!.Count);
        Assert.Equal(stand.European!.Mean, stand.Sample!.Average(p => p.NetGrams) - 36, 1e-6);
        Assert.True(stand.ToPack > 25_000 || stand.Target!.ByAverage == 25_000);

        var before = Assert.Single(ContentStand.All(mill, new ContentOptions(NetRules.US), Ten + Duration.FromHours(2)));
        Assert.False(before.IsTareWrong);
        Assert.Null(before.WrongSince);
        Assert.Equal(24, before.American!.Plan.Size);
    }

    [Theory, OnSqlite]
    public void Keep_Inspection_GetsTheNextNumberOnceAndAsksAboutOddWeights(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var inspection = new ContentInspection(NetRules.US, "WB-25", 25_000, 5, [25_200, 25_190, 25_210, 25_195, 25_205], 180, "Ada", Ten, "Ben");
        Assert.Equal("NC-2026-0001", ContentInspections.Keep(mill, inspection, "", Ten).Number);
        Assert.Equal("NC-2026-0001", ContentInspections.Keep(mill, inspection, "", Ten).Number);
        Assert.Equal("NC-2026-0002", ContentInspections.Keep(mill, inspection with { Remark = "second of the day" }, "", Ten).Number);
        var odd = inspection with { Gross = [25.2, 25.19, 25.21, 25.195, 25.205], TareGrams = 0.18 };
        Assert.Contains("is the unit right?", Assert.Single(ContentInspections.Keep(mill, odd, "", Ten).Questions), StringComparison.Ordinal);
        Assert.Equal("NC-2026-0003", ContentInspections.Keep(mill, odd, "samples of 25 g", Ten).Number);
        Assert.Contains("samples of 25 g", ContentInspections.Find(mill, "nc-2026-0003")!.Value.Inspection.Remark, StringComparison.Ordinal);
        Assert.Equal(3, ContentInspections.All(mill).Count);
        Assert.Contains("Of 5 packages 5", Assert.Single(ContentInspections.Keep(mill, inspection with { Gross = [25_200] }, "", Ten).Faults), StringComparison.Ordinal);
    }

    // Weights that look like a line's: around 25.19 kg gross, s about 12 g, from a fixed run of numbers.
    private static WeighedHour Hour(string line, int hour, int count, int seed)
    {
        var from = Ten + Duration.FromHours(hour);
        var state = (uint)(seed * 7919) + 17;
        int Next()
        {
            state = unchecked((state * 1664525) + 1013904223);
            return (int)(state >> 24);
        }

        return new WeighedHour(line, "WB-25", from, [.. Enumerable.Range(0, count).Select(i => new WeighedPackage(from + Duration.FromMilliseconds(i * 7000L), 251_900 + Next() + Next() - 255, 1_800, false))]);
    }
}
