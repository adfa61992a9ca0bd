using Evengrist.Laboratory;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Laboratory;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests.Laboratory;

/// <summary>Decisions about a lot of two bulk loads, one of which went to a bakery.</summary>
public sealed class DecideLotTests
{
    private const string Lot = "WB-260701";
    private static readonly Instant Packed = SmallMill.Morning + Duration.FromHours(1), Later = SmallMill.Morning + Duration.FromHours(5);

    [Theory, OnSqlite, OnPostgres]
    public void Hold_OfALot_LiesOnWhatIsHereAndNamesWhatHasGone(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var decided = new DecideLot(Lot, LotVerdict.Hold, "ash above the limit", Later).In(mill, "Ada");
        Assert.Empty(decided.Faults);
        Assert.Equal(["L2"], decided.Packages);
        Assert.Equal(("L1", "BAKERY"), (Assert.Single(decided.Gone).Place, decided.Gone[0].Customer));
        var refusal = Assert.Throws<LedgerRefusal>(() => mill.Record([new Move("m4", "L2", "BAKERY", Mass.FromTonnes(1m), Later + Duration.FromHours(1))], "Ada", "test"));
        Assert.Equal(LedgerRule.OnHold, refusal.Rule);
        Assert.Equal((LotState.Held, 1, 1), See(mill, Later + Duration.FromHours(2)));

        var released = new DecideLot(Lot, LotVerdict.Release, "tested again by the furnace", Later + Duration.FromHours(3)).In(mill, "ada");
        Assert.Equal(["L2"], released.Packages);
        Assert.Equal((LotState.Released, 0, 2), See(mill, Later + Duration.FromHours(4)));
        Assert.Equal((LotState.Held, 1, 1), See(mill, Later + Duration.FromHours(2))); // what was so stays so
        Assert.Equal(1, mill.Record([new Move("m4", "L2", "BAKERY", Mass.FromTonnes(1m), Later + Duration.FromHours(5))], "Ada", "test").Added);
    }

    [Theory, OnSqlite]
    public void Decision_ThatCannotBe_IsRefusedInWordsAndChangesNothing(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        var hold = new DecideLot(Lot, LotVerdict.Hold, "ash", Later);
        var before = mill.Ask(v => v.Book.Last);
        (DecideLot Entry, string By, string Says)[] refused =
        [
            (hold, "", "Say who you are"), (hold, "Ben", "Ben is not among those"), (hold with { Reason = " " }, "Ada", "Say why."), (hold with { Lot = "WB-260702" }, "Ada", "There is no lot"), (hold with { Verdict = LotVerdict.None }, "Ada", "what is decided"),
            (hold with { Verdict = LotVerdict.Release, Reason = "" }, "Ada", "do not advise release"), (hold with { Verdict = LotVerdict.Downgrade }, "Ada", "which flour"), (hold with { Verdict = LotVerdict.Downgrade, As = "wb" }, "Ada", "WB already"),
            (hold with { Specification = "HG" }, "Ada", "No specification HG"), (hold with { Seen = 1 }, "Ada", "decided meanwhile"), (hold with { At = SmallMill.Morning }, "Ada", "There is no lot"),
        ];
        Assert.All(refused, r =>
        {
            var decided = r.Entry.In(mill, r.By);
            Assert.Null(decided.Decision);
            Assert.Contains(decided.Faults, f => f.Contains(r.Says, StringComparison.Ordinal));
        });
        Assert.Equal(before, mill.Ask(v => v.Book.Last));
        Assert.Empty(LotDecisions.All(mill));
        Assert.Null(hold.In(mill, "Ada").Faults.SingleOrDefault());
        Assert.Contains(new DecideLot(Lot, LotVerdict.Release, "x", Packed + Duration.FromHours(1)).In(mill, "Ada").Faults, f => f.Contains("give a later moment", StringComparison.Ordinal));
    }

    [Theory, OnSqlite]
    public void Release_ThatTheFiguresAdvise_NeedsNoReason_AndNobodyMayWithoutRules(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        FlourSpecifications.Keep(mill, new Specification("WB", "WB", [new(Property.Protein, "%", "posed") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m }]), "Ada");
        mill.Record([new Measure("r", "L2", Packed, Property.Protein, 11.9m, "%", Basis.At14, "combustion", "N-1", 0.05m)], "Ada", "test");
        var decided = new DecideLot(Lot, LotVerdict.Release, "", Later).In(mill, "Ada");
        var result = Assert.Single(decided.Decision!.Results);
        Assert.Equal((11.9m, "release", "WB version 1"), (result.Value, result.Advice, decided.Decision.Specification));
        KeepReleaseRules.Keep(mill, ReleaseRules.Start, "Ada");
        Assert.Contains(new DecideLot(Lot, LotVerdict.Hold, "x", Later).In(mill, "Ada").Faults, f => f.StartsWith("Nobody may release yet", StringComparison.Ordinal));
    }

    [Theory, OnSqlite]
    public void Release_OnAnInstrumentOutOfCheck_TakesAReasonThatIsKept_OrAnotherInstrument(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        FlourSpecifications.Keep(mill, new Specification("WB", "WB", [new(Property.Protein, "%", "posed") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m }]), "Ada");
        KeepLabInstruments.Keep(mill, new LabInstruments([new("NIR-2", ["NIR"], 24, [new(Property.Protein, 0.2m, FigureMark.Ours, "test")], [])]), "Ada");
        mill.Record([new Measure("r", "L2", Packed, Property.Protein, 11.9m, "%", Basis.At14, "NIR", "NIR-2", 0.05m)], "Ada", "test");
        var release = new DecideLot(Lot, LotVerdict.Release, "", Later);
        Assert.Contains("overdue for its check", Assert.Single(release.In(mill, "Ada").Faults), StringComparison.Ordinal);
        Assert.Empty(InstrumentChecks.Keep(mill, new InstrumentCheck("NIR-2", Packed - Duration.FromHours(1), Property.Protein, 12.0m, [12.5m], "CS-1"), "Ada", Later));
        var refused = Assert.Single(release.In(mill, "Ada").Faults);
        Assert.Contains("off by +0.5, allowed ±0.2", refused, StringComparison.Ordinal);
        Assert.Contains("on another instrument", refused, StringComparison.Ordinal);
        Assert.Empty(LotDecisions.All(mill));

        var kept = (release with { Reason = "the customer takes it on our word" }).In(mill, "Ada").Decision!;
        Assert.Contains("out of check", Assert.Single(Assert.Single(LotDecisions.All(mill)).Results).OutOfCheck, StringComparison.Ordinal);
        Assert.Equal(("the customer takes it on our word", "hold"), (kept.Reason, kept.Results[0].Advice));
        mill.Record([new Measure("r2", "L2", Packed, Property.Protein, 11.88m, "%", Basis.At14, "combustion", "N-1", 0.08m)], "Ada", "test");
        var second = (release with { At = Later + Duration.FromHours(1) }).In(mill, "Ada");
        Assert.Empty(second.Faults);
        Assert.Equal((11.88m, ""), (second.Decision!.Results[0].Value, second.Decision.Results[0].OutOfCheck));
    }

    [Theory, OnSqlite]
    public void Downgrade_ReleasesAsTheOtherFlour_AndReworkHolds(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Open(site);
        Assert.Equal(["L2"], new DecideLot(Lot, LotVerdict.Rework, "specks", Later).In(mill, "Ada").Packages);
        Assert.Equal((LotState.Rework, 1, 1), See(mill, Later));
        var down = new DecideLot(Lot, LotVerdict.Downgrade, "specks", Later + Duration.FromHours(1)) { As = "AP" }.In(mill, "Ada");
        Assert.Equal(("AP", true), (down.Decision!.As, down.Decision.IsReleased));
        Assert.Equal((LotState.Downgraded, 0, 2), See(mill, Later + Duration.FromHours(1)));
    }

    [Theory, OnSqlite]
    public void Specification_ByCodeAndVersion_HoldsFromItsDay(Store store)
    {
        using var site = new TestSite(store);
        using var mill = site.Open();
        var first = new Specification("WB", "WB", [new(Property.Ash, "%", "posed") { Basis = Basis.At14, Upper = 0.5m }]) { ValidFrom = new LocalDate(2026, 1, 1) };
        Assert.Equal(1, FlourSpecifications.Keep(mill, first, "Ada", 0).Kept!.Version);
        Assert.Contains("stands already", Assert.Single(FlourSpecifications.Keep(mill, first, "Ada", 0).Faults), StringComparison.Ordinal);
        Assert.Contains("is of WB", Assert.Single(FlourSpecifications.Keep(mill, first with { Flour = "AP" }, "Ada").Faults), StringComparison.Ordinal);
        Assert.Contains(FlourSpecifications.Keep(mill, first with { Items = [] }, " ").Faults, f => f.Contains("who you are", StringComparison.Ordinal));
        Assert.Equal(2, FlourSpecifications.Keep(mill, first with { ValidFrom = new LocalDate(2026, 6, 1), Remark = "new" }, "Ada", 1).Kept!.Version);
        Assert.Equal(1, Assert.Single(FlourSpecifications.Of(mill, "wb", new LocalDate(2026, 5, 31))).Version);
        Assert.Equal(2, Assert.Single(FlourSpecifications.Of(mill, "WB", new LocalDate(2026, 6, 1))).Version);
        Assert.Empty(FlourSpecifications.Of(mill, "WB", new LocalDate(2025, 12, 31)));
        Assert.Equal(2, FlourSpecifications.Versions(mill, "wb").Count);
        Assert.Equal(0, KeepLegalRules.Newest(mill).Version);
    }

    private static Mill Open(TestSite site)
    {
        var mill = site.Open();
        mill.Record(
            [
                new OpenPlace("gain", "GAIN", PlaceKind.Gain), new OpenPlace("fb", "FB1", PlaceKind.FlourBin, Material: "WB"), new OpenPlace("cu", "BAKERY", PlaceKind.Customer, "Small bakery"),
                new OpenPlace("l1", "L1", PlaceKind.BulkLoad, Material: "WB"), new OpenPlace("l2", "L2", PlaceKind.BulkLoad, Material: "WB"), new Move("g", "GAIN", "FB1", Mass.FromTonnes(60m), SmallMill.Morning),
                new Move("m1", "FB1", "L1", Mass.FromTonnes(20m), Packed), new Move("m2", "FB1", "L2", Mass.FromTonnes(20m), Packed), new Move("m3", "L1", "BAKERY", Mass.FromTonnes(20m), Packed + Duration.FromHours(1)),
            ],
            "Ada", "test");
        KeepReleaseRules.Keep(mill, new ReleaseRules(1, 0, ["Ada"]), "Ada");
        return mill;
    }

    // State, packages on hold, decisions.
    private static (LotState State, int Held, int Decisions) See(Mill mill, Instant at) => LotShelf.Find(mill, Lot, at) is { } seen ? (seen.State, seen.Held, seen.Decisions.Count) : throw new InvalidOperationException("No lot.");
}
