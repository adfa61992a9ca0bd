using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class TicketStepTests
{
    private static readonly Instant Now = Instant.FromUtc(2026, 7, 9, 15, 0);
    private static readonly Mass Gross = Mass.FromKilograms(38_460m), Tare = Mass.FromKilograms(12_120m);
    private static readonly LoadDecision ToB1 = new(LoadDecisionKind.Accept, "b1", ["PIT", "LEG"]);

    [Theory, OnSqlite, OnPostgres]
    public void Steps_OneAfterTheOther_LeaveTheLoadInTheBin(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        Assert.Equal("26-0709-001", ticket);
        Steps(mill, ticket);
        Assert.Equal((Mass.FromKilograms(26_340m), Mass.Zero, Mass.Zero), (mill.Stock("B1"), mill.Stock(ticket), mill.SumOfStocks()));
        var state = mill.Ask(v => TruckStages.Of(v.Book, v.Book.Named(ticket), Now + Duration.FromHours(1)))!;
        Assert.Equal([TruckStage.AtGate, TruckStage.Weighed, TruckStage.Probed, TruckStage.Graded, TruckStage.SentTo, TruckStage.Empty], state.Reached.Select(r => r.Stage));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Steps_SentTwice_AreOnceEvenWhenLateAndTheTicketMovedOn(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        Steps(mill, ticket);
        var last = mill.Ask(v => v.Book.Last);
        var later = Now + Duration.FromMinutes(40);
        Assert.Equal((ticket, 0), (Open(mill, "k1", later).Ticket, Open(mill, "k1", later).Receipt.Added));
        Steps(mill, ticket, later);
        Assert.Equal(last, mill.Ask(v => v.Book.Last));
    }

    [Theory, OnSqlite, OnPostgres]
    public async Task OpenTicket_TwoStationsAtOnceWithRepeats_GiveEveryNumberOnce(Store store)
    {
        const int Each = 30;
        using var site = new TestSite(store);
        using var mill = Filled(site);
        string[] Station(string name) => [.. Enumerable.Range(0, 2 * Each).Select(i => new OpenTicket(name, $"k{i / 2}", "F1") { Plate = name }.In(mill, "Ada", Now).Ticket)];
        var both = await Task.WhenAll(Task.Run(() => Station("scale 1")), Task.Run(() => Station("scale 2")));
        Assert.All(both, tickets => Assert.Equal(Each, tickets.Distinct().Count()));
        Assert.Equal(Enumerable.Range(1, 2 * Each).Select(n => $"26-0709-{n:000}"), both.SelectMany(t => t).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory, OnSqlite, OnPostgres]
    public void WeighIn_TicketChangedByAnother_IsRefusedUntilLookedAtAgain(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        var seen = Newest(mill, ticket);
        new ReadSample(ticket, "r1", Now, [new(Property.Moisture, 12m, "%", default, "NIR")]) { Seen = seen }.In(mill, "Bea");
        var weighing = new WeighIn(ticket, Gross) { Seen = seen };
        var refusal = Assert.Throws<LedgerRefusal>(() => weighing.In(mill, "Ada", Now));
        Assert.Equal((LedgerRule.ChangedMeanwhile, ticket), (refusal.Rule, refusal.Place));
        Assert.Equal(1, (weighing with { Seen = Newest(mill, ticket) }).In(mill, "Ada", Now).Added);
        Assert.Equal(0, weighing.In(mill, "Ada", Now).Added);
    }

    [Theory, OnSqlite, OnPostgres]
    public void InNumbered_WholeTicketsWithRepeats_GetTheNextNumbers(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var truck = new ReceiveTruck("", "F1", Gross, Tare, Now) { Plate = "KS 1", Route = ["PIT", "LEG", "B1"] };
        Open(mill, "k1");
        Assert.Equal(["26-0709-002", "26-0709-002", "26-0709-003"], new[] { "w1", "w1", "w2" }.Select(key => truck.InNumbered(mill, "Ada", "scale 1", key).Ticket));
        Assert.Equal(Mass.FromKilograms(2 * 26_340m), mill.Stock("B1"));
        Assert.Equal(LedgerRule.KeyTaken, Assert.Throws<LedgerRefusal>(() => (truck with { Tare = Mass.FromKilograms(12_140m) }).InNumbered(mill, "Ada", "scale 1", "w1")).Rule);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Steps_ThatCannotBe_AreRefusedInWordsAndNothingIsThere(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        var before = mill.Ask(v => v.Book.Last);
        Refused("no ticket 26-0709-044", () => new WeighIn("26-0709-044", Gross).In(mill, "Ada", Now));
        Refused("Is the unit right", () => new WeighIn(ticket, Mass.FromTonnes(384m)).In(mill, "Ada", Now));
        Refused("not weighed full yet", () => new WeighOut(ticket, Tare).In(mill, "Ada", Now));
        Refused("no wheat bin", () => new DecideLoad(ticket, "d", new LoadDecision(LoadDecisionKind.Accept, "PIT")).In(mill, "Ada", Now));
        Refused("choose one", () => new DecideLoad(ticket, "d", new LoadDecision(LoadDecisionKind.Accept)).In(mill, "Ada", Now));
        Refused("Nothing can go from PIT to B1", () => new DecideLoad(ticket, "d", new LoadDecision(LoadDecisionKind.Accept, "B1", ["PIT"])).In(mill, "Ada", Now));
        Refused("Say why", () => new DecideLoad(ticket, "d", new LoadDecision(LoadDecisionKind.TurnAway)).In(mill, "Ada", Now));
        Refused("given no reading", () => new ReadSample(ticket, "r", Now, []).In(mill, "Ada"));
        Refused("neither a field nor an elevator", () => new OpenTicket("scale 1", "k9", "B1").In(mill, "Ada", Now));
        Refused("under a key of its own", () => new OpenTicket("scale 1", "", "F1").In(mill, "Ada", Now));
        Refused("no version 2 of a contract SPOT", () => (new OpenTicket("scale 1", "k9", "F1") { Contract = ("SPOT", 2) }).In(mill, "Ada", Now));
        Refused("with other content", () => (new OpenTicket("scale 1", "k1", "F1") { Plate = "another" }).In(mill, "Ada", Now));
        Assert.Equal(before, mill.Ask(v => v.Book.Last));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Steps_AfterAWeight_AreRefusedWhereTheySayOtherwise(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        new WeighIn(ticket, Gross).In(mill, "Ada", Now);
        Refused("sent to no bin", () => new WeighOut(ticket, Tare).In(mill, "Ada", Now));
        Refused("weighed full at 38460 kg already", () => new WeighIn(ticket, Tare).In(mill, "Ada", Now));
        new DecideLoad(ticket, "d", new LoadDecision(LoadDecisionKind.SetAside), "smells of smoke").In(mill, "Ada", Now);
        Refused("sent to no bin", () => new WeighOut(ticket, Tare).In(mill, "Ada", Now));
        new DecideLoad(ticket, "d2", ToB1).In(mill, "Ada", Now);
        Refused("above the gross", () => new WeighOut(ticket, Mass.FromTonnes(39m)).In(mill, "Ada", Now));
        Refused("full and empty", () => new WeighOut(ticket, Gross).In(mill, "Ada", Now));
        new WeighOut(ticket, Tare).In(mill, "Ada", Now);
        Refused("weighed empty at 12120 kg already", () => new WeighOut(ticket, Mass.FromTonnes(13m)).In(mill, "Ada", Now));
        Refused("Put the bin right instead", () => new DecideLoad(ticket, "d3", ToB1 with { Bin = "B2" }).In(mill, "Ada", Now));
        mill.Record([new Happen("v", ticket, Now, HappeningKind.Voided, "wrong truck")], "Ada", "test");
        Refused("was voided", () => new WeighIn(ticket, Gross).In(mill, "Ada", Now));
    }

    [Theory, OnSqlite, OnPostgres]
    public void DecideLoad_ABinOnHold_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        mill.Record([new Happen("h", "B1", Now, HappeningKind.Held, "smell")], "Ada", "test");
        Assert.Equal(LedgerRule.OnHold, Assert.Throws<LedgerRefusal>(() => new DecideLoad(ticket, "d", ToB1).In(mill, "Ada", Now)).Rule);
    }

    [Theory, OnSqlite, OnPostgres]
    public void WeighOut_BeforeTheTruckWasWeighedFull_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var ticket = Open(mill, "k1").Ticket;
        new WeighIn(ticket, Gross) { Scale = "scale 2" }.In(mill, "Ada", Now + Duration.FromMinutes(10));
        new DecideLoad(ticket, "d", ToB1).In(mill, "Ada", Now + Duration.FromMinutes(11));
        Refused("cannot be weighed empty before", () => new WeighOut(ticket, Tare) { At = Now + Duration.FromMinutes(9) }.In(mill, "Ada", Now + Duration.FromMinutes(12)));
    }

    private static void Steps(Mill mill, string ticket, Instant? now = null)
    {
        var at = now ?? Now + Duration.FromMinutes(10);
        new WeighIn(ticket, Gross) { Seen = Newest(mill, ticket) }.In(mill, "Ada", at);
        new ReadSample(ticket, "r1", Now + Duration.FromMinutes(12), [new(Property.Protein, 13.1m, "%", Basis.At12, "NIR")]) { Seen = Newest(mill, ticket) }.In(mill, "Ada");
        new DecideLoad(ticket, "d1", ToB1) { Seen = Newest(mill, ticket) }.In(mill, "Ada", at + Duration.FromMinutes(5));
        new WeighOut(ticket, Tare) { Seen = Newest(mill, ticket) }.In(mill, "Ada", at + Duration.FromMinutes(10));
    }

    private static (string Ticket, Receipt Receipt) Open(Mill mill, string key, Instant? now = null) => new OpenTicket("scale 1", key, "f1") { Plate = "KS 1", Material = "HRW" }.In(mill, "Ada", now ?? Now);

    private static FactId Newest(Mill mill, string ticket) => mill.Ask(v => LoadWay.Newest(v.Book, v.Book.Named(ticket)));

    private static void Refused(string says, Action act) => Assert.Contains(says, Assert.Throws<LedgerRefusal>(act).Message, StringComparison.Ordinal);

    private static Mill Filled(TestSite site)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        return mill;
    }
}
