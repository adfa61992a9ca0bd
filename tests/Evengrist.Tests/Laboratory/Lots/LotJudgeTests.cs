using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory;
using Evengrist.Laboratory.Lots;
using Evengrist.Laboratory.Methods;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Lots;

public sealed class LotJudgeTests
{
    private static readonly SpecificationItem Protein = new(Property.Protein, "%", "posed") { Basis = Basis.At14, Lower = 11.7m, Upper = 12.1m };

    // A mill's policy of 0.95 and white flour of 11.7 to 12.1: common practice; chances by pnorm of R 4.2.2.
    [Theory]
    [InlineData("11.74", 1, "0.15", 0.597)]
    [InlineData("11.74", 4, "0.15", 0.703)]
    [InlineData("11.82", 4, "0.15", 0.945)]
    public void Result_OfReadings_IsTheirMeanAndItsChance(string value, int count, string u, double chance)
    {
        var mill = LotMill.Open();
        foreach (var i in Enumerable.Range(0, count))
        {
            mill.Read("U", 7 + i, Evengrist.Tests.Quantities.Num.Of(value), u: Evengrist.Tests.Quantities.Num.Of(u));
        }

        var result = Judge(mill, Protein);
        Assert.Equal(chance, result.Outcome!.Chance, 0.0005);
        Assert.IsNotType<ReleaseAdvice.Release>(result.Advice);
        Assert.Equal(("NIR", "NIR-2", count), (result.Method, result.Instrument, result.Values.Count));
    }

    [Fact]
    public void Result_IsOnTheBasisOfTheLine()
    {
        // 11.9 % at 14 % moisture is 11.9/0.86 = 13.837 % dry, and so is its uncertainty.
        var result = Judge(LotMill.Open().Read("U", 7, 11.9m), Protein with { Basis = Basis.Dry, Lower = 13m, Upper = 14m });
        Assert.Equal(13.8372m, result.Reported!.Value, 4);
        Assert.Equal(0.12 / 0.86, result.Outcome!.Uncertainty, 1e-12);
    }

    [Fact]
    public void Instruments_AreNeverMixed_TheSurestIsJudged()
    {
        var mill = LotMill.Open().Read("U", 7, 11.7m).Read("U", 8, 11.7m).Read("U", 7.5, 11.95m, "combustion", "N-1", 0.05m);
        var result = Judge(mill, Protein);
        Assert.Equal((11.95m, "combustion", 2), (result.Reported, result.Method, result.Others));
        Assert.Equal((11.7m, "NIR"), (Judge(mill, Protein with { Method = "nir" }).Reported, Judge(mill, Protein with { Method = "nir" }).Method));
    }

    [Fact]
    public void Bias_OfTheInstrument_IsNotAveragedAway()
    {
        var mill = LotMill.Open();
        foreach (var hour in Enumerable.Range(6, 8))
        {
            mill.Read("U", hour, 11.9m);
        }

        Assert.Equal(Math.Sqrt(((0.0144 - 0.0025) / 8) + 0.0025), Judge(mill, Protein with { BiasPart = 0.05 }).Outcome!.Uncertainty, 1e-12);
        Assert.Equal(0.12 / Math.Sqrt(8), Judge(mill, Protein).Outcome!.Uncertainty, 1e-12);
    }

    [Fact]
    public void Uncertainty_NotKnown_StatesNoChanceAndSaysWhy()
    {
        var result = Judge(LotMill.Open().Read("U", 7, 11.9m, u: null), Protein);
        Assert.Null(result.Outcome);
        Assert.Equal(11.9m, result.Reported);
        Assert.Contains("uncertainty of NIR is not known", result.WhyNot, StringComparison.Ordinal);
        Assert.IsType<ReleaseAdvice.Hold>(result.Advice);
    }

    [Fact]
    public void Reading_Wanting_HoldsWhereItIsRequired()
    {
        var mill = LotMill.Open().Read("U", 7, 11.9m, "combustion", "N-1");
        Assert.Contains("take a sample", Judge(LotMill.Open(), Protein).WhyNot, StringComparison.Ordinal);
        Assert.Contains("by Kjeldahl", Judge(mill, Protein with { Method = "Kjeldahl" }).WhyNot, StringComparison.Ordinal);
        Assert.IsType<ReleaseAdvice.Hold>(Judge(LotMill.Open(), Protein).Advice);
        Assert.Null(Judge(LotMill.Open(), Protein with { Required = false }).Advice);
    }

    // The rule is common practice: a result on an instrument that is not in check is held until another instrument confirms it or a person answers for it.
    [Theory]
    [InlineData(5.0, 11.9, 0, 11.9, "")] // checked an hour before the first sample
    [InlineData(5.0, 12.3, 0, 11.9, "out of check")] // that check was off by 0.4, allowed 0.2
    [InlineData(-30.0, 11.9, 0, 11.9, "overdue for its check")] // a check is good for 24 h
    [InlineData(5.0, 11.9, 20.0, 12.3, "failed its next check")]
    [InlineData(5.0, 11.9, 20.0, 12.1, "")] // on the tolerance
    public void Release_OfAnInstrumentOutOfCheck_IsNotAdvised(double checkedAt, double found, double againAt, double foundThen, string says)
    {
        InstrumentCheck Check(double hour, double value) => new("nir-2", LotMill.At(hour), Property.Protein, 11.9m, [(decimal)value], "CS-1");
        var record = new InstrumentRecord(new([new("NIR-2", ["NIR"], 24, [new(Property.Protein, 0.2m, FigureMark.Ours, "posed")], [])]), againAt > 0 ? [Check(againAt, foundThen), Check(checkedAt, found)] : [Check(checkedAt, found)], DateTimeZone.Utc);
        var judge = LotJudge.Of(new Specification("WB", "WB", [Protein]), 0.95) with { Instruments = record };
        var mill = LotMill.Open().Read("U", 7, 11.9m, u: 0.05m).Read("U", 8, 11.9m, u: 0.05m);
        var result = Assert.Single(judge.Results(mill.Readings("WB-250915-2")));
        Assert.True(result.Outcome!.Chance > 0.999);
        Assert.Equal(says.Length == 0, result.Advice is ReleaseAdvice.Release);
        Assert.Contains(says, result.OutOfCheck, StringComparison.Ordinal);
        Assert.Equal(says.Length == 0, result.OutOfCheck.Length == 0);
        Assert.Equal(result.OutOfCheck, DecidedResult.Of(result).OutOfCheck);

        // Another instrument, though less sure, goes before it and decides.
        mill.Read("U", 7, 11.88m, "combustion", "N-1", 0.08m);
        var again = Assert.Single(judge.Results(mill.Readings("WB-250915-2")));
        Assert.Equal((says.Length == 0 ? "NIR" : "combustion", ""), (again.Method, again.OutOfCheck));
        Assert.IsType<ReleaseAdvice.Release>(again.Advice);
    }

    // slope·x + bias, by hand: 1.02·11.75 − 0.05 = 11.935; both days stand on their own setting.
    [Fact]
    public void Setting_AppliedHere_AdjustsWhatIsJudgedAndKeepsWhatWasRead()
    {
        InstrumentCalibration Set(int day, decimal slope, decimal bias, AppliedWhere applied) => new(LotMill.Day.PlusDays(day), Property.Protein, slope, bias, "Ada") { Applied = applied };
        LotResult Judged(params InstrumentCalibration[] settings)
        {
            var record = new InstrumentRecord(new([new("NIR-2", ["NIR"], null, [], settings)]), [], DateTimeZone.Utc);
            return Assert.Single((LotJudge.Of(new Specification("WB", "WB", [Protein]), 0.95) with { Instruments = record }).Results(LotMill.Open().Read("U", 7, 11.75m).Readings("WB-250915-2")));
        }

        var here = Judged(Set(-9, 1, 0.5m, AppliedWhere.Here), Set(0, 1.02m, -0.05m, AppliedWhere.Here), Set(1, 1, 0.9m, AppliedWhere.Here));
        Assert.Equal((11.935m, 11.75m, 0.12 * 1.02), (here.Reported, here.ReportedAsRead, here.Outcome!.Uncertainty));
        Assert.Equal(11.75m, Assert.Single(here.Readings).Value);
        var inside = Judged(Set(0, 1.02m, -0.05m, AppliedWhere.InTheInstrument));
        Assert.Equal((11.75m, null), (inside.Reported, inside.ReportedAsRead)); // nothing is applied twice
        Assert.Equal(here.Reported, (here with { Item = Protein with { Rule = ResultRule.Single } }).Reported);
    }

    [Fact]
    public void Rejudgement_TakesTheBiasOffTheReadingsOfTheSpanAlone()
    {
        // Four of eight hourly readings 0.28 too high: the mean was 0.14 too high.
        var mill = LotMill.Open();
        foreach (var hour in Enumerable.Range(6, 8))
        {
            mill.Read("U", hour, hour >= 10 ? 12.18m : 11.90m);
        }

        var judge = LotJudge.Of(new Specification("WB", "WB", [Protein]), 0.95);
        var lot = LotMill.Lots(LotMill.ThreeShifts).Find(mill.Book, "WB-250915-2")!;
        var wrong = new WrongSpan("nir-2", Property.Protein, LotMill.At(9.5), LotMill.At(20), 0.28, 0.02);
        var again = Rejudgement.Of(lot, mill.Readings("WB-250915-2"), judge, wrong)!;
        Assert.Equal((4, 12.04m, 11.90m), (again.Wrong, again.Before.Reported, again.After.Reported));
        Assert.True(again.After.Outcome!.Chance > again.Before.Outcome!.Chance);
        Assert.Equal(Math.Sqrt((0.0144 / 8) + 0.0001), again.After.Outcome.Uncertainty, 1e-9); // half the readings share the correction's 0.02
        Assert.Null(Rejudgement.Of(lot, mill.Readings("WB-250915-2"), judge, wrong with { Instrument = "NIR-9" }));
        Assert.Null(Rejudgement.Of(lot, mill.Readings("WB-250915-2"), judge, wrong with { What = Property.Ash }));
    }

    [Fact]
    public void Decision_ComesBackFromJson_WithAndWithoutResults()
    {
        var mill = LotMill.Open().Read("U", 7, 11.9m);
        var decision = new LotDecision("WB-250915-2", LotVerdict.Downgrade, "Ada", LotMill.At(20), "specks") { As = "AP", Results = [DecidedResult.Of(Judge(mill, Protein)), DecidedResult.Of(Judge(LotMill.Open(), Protein))] };
        Assert.True(LotDecision.TryRead(decision.ToJson(), out var read, out var faults), string.Join(" ", faults));
        Assert.Equal(decision, read with { Results = decision.Results });
        Assert.Equal(decision.Results, read.Results);
        Assert.Null(read.Results[1].Chance);
    }

    [Fact]
    public void WrongSpan_ThatCannotBe_SaysWhatToDo()
    {
        var wrong = new WrongSpan("NIR-2", Property.Protein, LotMill.At(0), LotMill.At(1), 0.28, 0);
        Assert.Null(wrong.Fault);
        Assert.Contains("which instrument", (wrong with { Instrument = " " }).Fault, StringComparison.Ordinal);
        Assert.Contains("which property", (wrong with { What = Property.None }).Fault, StringComparison.Ordinal);
        Assert.Contains("before it begins", (wrong with { Until = LotMill.At(0) }).Fault, StringComparison.Ordinal);
        Assert.Contains("is a number", (wrong with { Bias = double.NaN }).Fault, StringComparison.Ordinal);
    }

    private static LotResult Judge(Evengrist.Tests.Ledger.PosedMill mill, SpecificationItem item) =>
        Assert.Single(LotJudge.Of(new Specification("WB", "WB", [item]), 0.95).Results(mill.Readings("WB-250915-2")));
}
