using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Intake.Trade;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Intake;
using Evengrist.Records.Tests.Stores;
using NodaTime;

namespace Evengrist.Records.Tests;

public sealed class PayTicketsTests
{
    private const string Ticket = "26-0701-001";

    // Practice A1: 38,460 and 12,120 kg, 1.2 % dockage, 14.2 % moisture, 13.1 % protein 12mb at 6.20 USD/bu and the notice's scale pay 6,487.58 USD.
    private static readonly ReceiveTruck Truck = new(Ticket, "F1", Mass.FromKilograms(38_460m), Mass.FromKilograms(12_120m), SmallMill.Morning)
    {
        Plate = "KS 482", Material = "HRW", Contract = ("SPOT", 1), Route = ["PIT", "LEG", "B2"],
        Readings = [new(Property.Dockage, 1.2m, "%", default, "sieve", "D1"), new(Property.Moisture, 14.2m, "%", default, "NIR", "N1"), new(Property.Protein, 13.1m, "%", Basis.At12, "NIR", "N1")],
    };

    private static readonly Instant Noon = SmallMill.Morning + Duration.FromHours(6);

    [Theory, OnSqlite, OnPostgres]
    public void Pay_AdvanceThenFinal_AreTwoFactsThatSumToThePay(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Equal(Money.Of(4_541.31m, "USD"), new PayTickets([Ticket], new PercentOfPay(70m), Noon).In(mill, "Ines")[0].Payment.Money);
        Assert.Equal(Money.Of(1_946.27m, "USD"), new PayTickets([Ticket], null, Noon + Duration.FromHours(1)).In(mill, "Ines")[0].Payment.Money);
        var account = Account(mill);
        Assert.Equal((PaymentStage.Settled, Money.Of(6_487.58m, "USD")), (account.Stage, account.Paid!.Value));
        Assert.Equal(5, account.Load.Payments[0].Payment.From.Count);
        Assert.All(account.Load.Payments[0].Payment.From, f => Assert.Contains(account.Load.Readings, r => r.Id.Value == f.Fact && r.Value == f.Value));
        Assert.Contains("It is settled", Assert.Throws<LedgerRefusal>(() => new PayTickets([Ticket], null, Noon + Duration.FromHours(2)).In(mill, "Ines")).Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Pay_WithoutACertificate_IsRefusedUntilItIsEntered(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site, certified: false);
        var pay = new PayTickets([Ticket], null, Noon);
        var refusal = Assert.Throws<LedgerRefusal>(() => pay.In(mill, "Ines")).Message;
        Assert.All(new[] { "truck scale", "N1", "D1" }, i => Assert.Contains($"{i} had no certificate in force on 2026-07-01", refusal, StringComparison.Ordinal));
        Certify(mill);
        Assert.Equal(6_487.58m, pay.In(mill, "Ines")[0].Payment.Amount);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Pay_OneOfSeveralMayNotBePaid_NothingIsRecorded(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        var last = mill.Ask(v => v.Book.Last);
        Assert.Contains("There is no ticket \"26-0701-999\"", Assert.Throws<LedgerRefusal>(() => new PayTickets([Ticket, "26-0701-999"], null, Noon).In(mill, "Ines")).Message, StringComparison.Ordinal);
        Assert.Equal(last, mill.Ask(v => v.Book.Last));
    }

    [Theory, OnSqlite, OnPostgres]
    public void Void_AfterAnAdvance_TakesTheGrainBackAndKeepsBoth(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        new PayTickets([Ticket], new PercentOfPay(70m), Noon).In(mill, "Ines");
        Assert.Equal(Mass.FromKilograms(26_340m), mill.Stock("B2"));
        Assert.Equal(5, new VoidTicket(Ticket, "weighed under the wrong number", Noon + Duration.FromHours(1)).In(mill, "Ada").Added);
        Assert.Equal((Mass.Zero, Mass.Zero, Mass.Zero), (mill.Stock("B2"), mill.Stock(Ticket), mill.SumOfStocks()));
        var account = Account(mill);
        Assert.Equal((PaymentStage.Voided, Money.Of(-4_541.31m, "USD")), (account.Stage, account.Left!.Value));
        Assert.Equal(4, mill.Ask(v => v.Book.Movements.Index().Count(m => m.Item.Mass == Mass.FromKilograms(26_340m) && !v.Book.Counts(m.Index))));
        Assert.Contains("void already", Assert.Throws<LedgerRefusal>(() => new VoidTicket(Ticket, "again", Noon + Duration.FromHours(2)).In(mill, "Ada")).Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Void_GrainThatHasGoneOn_IsRefusedAndNothingChanges(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        mill.Record([new OpenPlace("w", "WASTE", PlaceKind.Waste), new Move("out", "B2", "WASTE", Mass.FromKilograms(1_000m), Noon)], "Ada", "test");
        Assert.Equal(LedgerRule.WouldOverdraw, Assert.Throws<LedgerRefusal>(() => new VoidTicket(Ticket, "a mistake", Noon + Duration.FromHours(1)).In(mill, "Ada")).Rule);
        Assert.Null(Account(mill).Load.Voided);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Void_WithoutAReasonOrOfNoTicket_IsRefused(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        Assert.Contains("say why", Assert.Throws<LedgerRefusal>(() => new VoidTicket(Ticket, " ", Noon).In(mill, "Ada")).Message, StringComparison.Ordinal);
        Assert.Contains("is no ticket", Assert.Throws<LedgerRefusal>(() => new VoidTicket("B2", "x", Noon).In(mill, "Ada")).Message, StringComparison.Ordinal);
    }

    [Theory, OnSqlite, OnPostgres]
    public void Correct_AfterSettling_KeepsBothAndSaysTheDifference(Store store)
    {
        using var site = new TestSite(store);
        using var mill = Filled(site);
        new PayTickets([Ticket], null, Noon).In(mill, "Ines");
        var protein = Account(mill).Load.Read(Property.Protein)!;
        mill.Record([new Measure("again", Ticket, protein.At, Property.Protein, 12.6m, "%", Basis.At12, "NIR", "N1") { Corrects = protein.Id, Note = "typed wrongly" }], "Ada", "test");
        var account = Account(mill);
        Assert.Equal((PaymentStage.SettledOtherwise, Money.Of(-189.69m, "USD")), (account.Stage, account.Left!.Value));
        Assert.Equal(["protein is 12.6 % 12mb now and was 13.1 % 12mb then"], account.ChangedSince);
        Assert.False(mill.Ask(v => v.Book.Counts(v.Book.Readings.Single(r => r.Id == protein.Id))));
    }

    private static PaymentAccount Account(Mill mill)
    {
        var shelf = TradeShelf.Of(mill);
        return mill.Ask(v => PaymentAccount.Of(shelf.Reader(v, Instant.MaxValue).Look(v.Book.Named(Ticket))!));
    }

    private static Mill Filled(TestSite site, bool certified = true)
    {
        var mill = site.Open();
        mill.Record(SmallMill.Places, "Ada", "test");
        mill.Contracts.Keep("SPOT", 1, TermsJson.Write(new ContractTerms
        {
            Code = "SPOT", Version = 1, Base = Price.Of(Money.Of(6.20m, "USD"), PriceUnit.Bushel), DeductDockage = true, DryMatterShrink = true, BaseMoisture = Moisture.FromPercent(13.5m),
            Scales = [ReferenceScales.KansasCityHardWinter],
        }), "Ada");
        if (certified)
        {
            Certify(mill);
        }

        Truck.In(mill, "Ada");
        return mill;
    }

    private static void Certify(Mill mill)
    {
        foreach (var instrument in new[] { "truck scale", "N1", "D1" })
        {
            TradeShelf.Keep(mill, Certificate.Kind, new Certificate { Code = instrument, Instrument = instrument, Number = "C-1", Body = "County sealer", From = new(2026, 1, 1), Until = new(2026, 12, 31) }, "Ada");
        }
    }
}
