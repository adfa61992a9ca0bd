using CsCheck;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Quantities;
using static Evengrist.Tests.Intake.Paying.PosedLoads;

namespace Evengrist.Tests.Intake.Paying;

public sealed class PaymentTests
{
    private static readonly AdvanceRule Seventy = new PercentOfPay(70m);

    // 70 % of 6,487.58 USD (practice A1) is 4,541.306, paid as 4,541.31; 1,946.27 is left.
    [Fact]
    public void AdvanceThenFinal_OfTheWorkedLoad_SumToItsPayToTheCent()
    {
        var advanced = Worked.Paid(PaymentModel.Advance(Worked.Account(), Seventy, "Ines"));
        Assert.Equal((PaymentStage.Advanced, Dollars(4_541.31m), Dollars(1_946.27m)), (advanced.Account().Stage, advanced.Account().Paid!.Value, advanced.Account().Left!.Value));
        var settled = advanced.Paid(PaymentModel.Settle(advanced.Account(), "Ines"));
        Assert.Equal((PaymentStage.Settled, Dollars(6_487.58m), Dollars(0m)), (settled.Account().Stage, settled.Account().Paid!.Value, settled.Account().Left!.Value));
        Assert.Equal([PaymentKind.Advance, PaymentKind.Final], settled.Payments.Select(p => p.Payment.Kind));
        Assert.Empty(settled.Account().ChangedSince);
        Assert.Contains("It is settled", Refused(PaymentModel.Settle(settled.Account(), "Ines")), StringComparison.Ordinal);
    }

    [Fact]
    public void Advance_ByTheTonne_NeedsNoQuality()
    {
        var unread = Worked with { Readings = [.. Worked.Readings.Where(r => r.What != Property.Protein)] };
        var paid = unread.Paid(PaymentModel.Advance(unread.Account(), new FixedPerTonne(Dollars(150m)), "Ines"));
        Assert.Equal(Dollars(3_951.00m), paid.Account().Paid); // 26.34 t × 150
        Assert.Null(paid.Account().Left);
        Assert.Contains("A part of the pay cannot be reckoned yet", Refused(PaymentModel.Advance(unread.Account(), Seventy, "Ines")), StringComparison.Ordinal);
        Assert.Contains("No protein is recorded", Refused(PaymentModel.Settle(unread.Account(), "Ines")), StringComparison.Ordinal);
    }

    // Protein 12.6 instead of 13.1: 0.44 for 0.64 a bushel; by hand 948.4772 bu × 6.64 = 6,297.89, which is 189.69 less.
    [Fact]
    public void Settled_ThenReadOtherwise_ShowsTheDifferenceAndOverwritesNothing()
    {
        var settled = Worked.Paid(PaymentModel.Settle(Worked.Account(), "Ines"));
        var retested = settled.Reads(Property.Protein, 12.6m);
        Assert.Equal(PaymentStage.SettledOtherwise, retested.Account().Stage);
        Assert.Equal(Dollars(-189.69m), retested.Account().Left);
        Assert.Equal(["protein is 12.6 % 12mb now and was 13.1 % 12mb then"], retested.Account().ChangedSince);
        var back = retested.Paid(PaymentModel.Settle(retested.Account(), "Ines"));
        Assert.Equal((PaymentKind.Difference, Dollars(-189.69m)), (back.Payments[1].Payment.Kind, back.Payments[1].Payment.Money));
        Assert.Equal((PaymentStage.Settled, settled.Payments[0].Payment.Money), (back.Account().Stage, back.Payments[0].Payment.Money));
    }

    [Fact]
    public void ReadAgainTheSame_AfterSettling_ChangesNothing()
    {
        var settled = Worked.Paid(PaymentModel.Settle(Worked.Account(), "Ines"));
        Assert.Empty(settled.Reads(Property.Protein, 13.1m).Account().ChangedSince);
    }

    [Fact]
    public void ContractChanged_AfterSettling_IsNamed()
    {
        var settled = Worked.Paid(PaymentModel.Settle(Worked.Account(), "Ines"));
        var other = settled with { Terms = settled.Terms! with { Version = 2, Base = Price.Of(Dollars(6.30m), PriceUnit.Bushel) } };
        Assert.Contains(other.Account().ChangedSince, c => c.StartsWith("it is settled under HRW-25 v2", StringComparison.Ordinal));
        Assert.Equal(Dollars(94.85m), other.Account().Left); // 0.10 × 948.48 bu
    }

    [Fact]
    public void Voided_AfterAnAdvance_IsToBeGotBackAndNothingMore()
    {
        var advanced = Worked.Paid(PaymentModel.Advance(Worked.Account(), Seventy, "Ines"));
        var voided = advanced with { Voided = new Happening(new FactId(500), new PlaceId(1), advanced.At, HappeningKind.Voided, "weighed twice") };
        Assert.Equal((PaymentStage.Voided, Dollars(-4_541.31m)), (voided.Account().Stage, voided.Account().Left!.Value));
        Assert.Contains("voided: weighed twice", Refused(PaymentModel.Advance(voided.Account(), Seventy, "Ines")), StringComparison.Ordinal);
        var back = voided.Paid(PaymentModel.Settle(voided.Account(), "Ines"));
        Assert.Equal(Dollars(0m), back.Account().Left);
        Assert.Equal(PaymentKind.Difference, back.Payments[1].Payment.Kind);
        Assert.Contains("voided", Refused(PaymentModel.Settle(back.Account(), "Ines")), StringComparison.Ordinal);
    }

    [Fact]
    public void Uncertified_NothingIsPaid()
    {
        var load = Worked with { Uncertified = [new("scale 1", Day)] };
        Assert.Contains("scale 1 had no certificate in force on 2025-07-09", Refused(PaymentModel.Settle(load.Account(), "Ines")), StringComparison.Ordinal);
        Assert.Contains("Not for settlement", Refused(PaymentModel.Advance(load.Account(), new FixedPerTonne(Dollars(1m)), "Ines")), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(101)]
    [InlineData(-5)]
    public void Advance_APercentageThatCannotBe_Refused(int percent) => Assert.Contains("at most 100", Refused(PaymentModel.Advance(Worked.Account(), new PercentOfPay(percent), "Ines")), StringComparison.Ordinal);

    [Fact]
    public void Advance_AboveThePayOrInAnotherCurrencyOrTwice_Refused()
    {
        Assert.Contains("above the provisional pay", Refused(PaymentModel.Advance(Worked.Account(), new FixedPerTonne(Dollars(900m)), "Ines")), StringComparison.Ordinal);
        Assert.Contains("in EUR", Refused(PaymentModel.Advance(Worked.Account(), new FixedPerTonne(Money.Of(100m, "EUR")), "Ines")), StringComparison.Ordinal);
        var advanced = Worked.Paid(PaymentModel.Advance(Worked.Account(), Seventy, "Ines"));
        Assert.Contains("already", Refused(PaymentModel.Advance(advanced.Account(), Seventy, "Ines")), StringComparison.Ordinal);
    }

    // Whatever was paid on the way, in the end exactly the pay is paid.
    [Fact]
    public void Payments_AnyAdvanceAndRetest_EndAtThePay() =>
        Gen.Select(Gen.Decimal[1, 100], Gen.Decimal[9, 16], Gen.Decimal[9, 16]).Sample((percent, first, second) =>
        {
            var load = Of("T", "DS-2", 38_460m, 12_120m, 1.2m, 14.2m, first);
            load = load.Paid(PaymentModel.Advance(load.Account(), new PercentOfPay(percent), "Ines"));
            load = load.Paid(PaymentModel.Settle(load.Account(), "Ines")).Reads(Property.Protein, second);
            if (load.Account().Left is { Amount: not 0m })
            {
                load = load.Paid(PaymentModel.Settle(load.Account(), "Ines"));
            }

            Assert.Equal(load.Account().Settled!.Pay, load.Account().Paid);
        }, iter: 200);

    [Fact]
    public void TryRead_WordsOrAnotherProgramsJson_IsNoPayment()
    {
        Happening Fact(string text) => new(new FactId(1), new PlaceId(1), Worked.At, HappeningKind.Settled, text);
        Assert.False(Payment.TryRead(Fact("paid by cheque"), out _));
        Assert.False(Payment.TryRead(Fact("paid\n{\"sum\": 4}"), out _));
        Assert.False(Payment.TryRead(Fact("paid\n{"), out _));
        Assert.False(Payment.TryRead(Fact("paid\n" + """{"kind":"Final","amount":1,"currency":"usd","rule":"x","netKg":1,"from":[],"by":"x"}"""), out _));
    }

    private static string Refused(PaymentOutcome outcome) => string.Join(" ", Assert.IsType<NotPaid>(outcome).Reasons);
}
