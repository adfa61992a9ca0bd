using CsCheck;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Quantities;
using static Evengrist.Tests.Intake.Paying.PosedLoads;

namespace Evengrist.Tests.Intake.Paying;

public sealed class StatementTests
{
    private static readonly Gen<LoadFacts[]> AnyLoads = Gen.Select(Gen.Int[13_000, 40_000], Gen.Decimal[0, 4], Gen.Decimal[9, 17], Gen.Decimal[9, 16], Gen.Int[0, 2])
        .Select((gross, dockage, moisture, protein, field) => Of("T", $"DS-{field}", gross, 12_000m, dockage, moisture, protein, uncertainty: 0.2m)).Array[1, 30];

    [Fact]
    public void Sums_AnyLoads_AreTheSumsOfTheTicketsToTheCent() => AnyLoads.Sample(loads =>
    {
        var statement = Assert.Single(Statement.Of(loads, Day, Day, Basis.At12));
        Assert.Equal(loads.Sum(l => l.Account().Settled!.Pay.Amount), statement.All.Gross!.Value.Amount);
        Assert.Equal(statement.All.Gross!.Value.Amount, statement.Fields.Sum(f => f.Gross!.Value.Amount));
        Assert.Equal(loads.Sum(l => l.Net.Grams), statement.Fields.Sum(f => f.Net.Grams));
        Num.Near(statement.All.Bushels, statement.Fields.Sum(f => f.Bushels), 1e-15m);
    }, iter: 100);

    [Fact]
    public void Causes_AnyLoads_SumFromTheBasePriceToThePay() => AnyLoads.Sample(loads =>
    {
        var all = Statement.Of(loads, Day, Day, Basis.At12)[0].All;
        Num.Near(all.Gross!.Value.Amount, all.AtBase!.Value.Amount + all.Causes.Sum(c => c.Money.Amount), 0.005m * loads.Length + 0.000001m);
    }, iter: 100);

    // By hand: 10 t at 10 % moisture, 14 % protein 12mb, and 20 t at 20 % moisture, 11 %: dry 9 t and 16 t; (9 × 14 + 16 × 11)/25 = 12.08 % 12mb, not the 12.00 of plain mass.
    [Fact]
    public void Protein_TwoMoistures_IsWeightedByDryMatter()
    {
        var average = QualityAverage.Of([Of("A", "F", 22_000m, 12_000m, moisture: 10m, protein: 14m), Of("B", "F", 32_000m, 12_000m, moisture: 20m, protein: 11m)], Property.Protein, Basis.At12)!;
        Num.Near(12.08m, average.Figure.Value, 1e-9m);
        Assert.Equal((Basis.At12, 2, Mass.FromTonnes(30m)), (average.Figure.Basis, average.Loads, average.Net));
        var dry = QualityAverage.Of([Of("A", "F", 22_000m, 12_000m, moisture: 10m, protein: 14m), Of("B", "F", 32_000m, 12_000m, moisture: 20m, protein: 11m)], Property.Protein, Basis.Dry)!;
        Num.Near(12.08m / 0.88m, dry.Figure.Value, 1e-9m);
    }

    // Published pair: 400 s and 220 s, half and half, give 279 s (practice A4).
    [Fact]
    public void FallingNumber_HalfAndHalf_GoesByLiquefactionNumber() =>
        Num.Near(279m, QualityAverage.Of([Of("A", "F", 22_000m, 12_000m, falling: 400m), Of("B", "F", 22_000m, 12_000m, falling: 220m)], Property.FallingNumber, Basis.At12)!.Figure.Value, 1m);

    // Four like loads, each ± u: the mean is ± u/2; one load keeps its own.
    [Theory]
    [InlineData(1, 0.2)]
    [InlineData(4, 0.1)]
    public void Uncertainty_LikeLoads_FallsWithTheRoot(int loads, double expected)
    {
        var posed = Enumerable.Range(0, loads).Select(i => Of($"T{i}", "F", 22_000m, 12_000m, falling: 300m, uncertainty: 0.2m)).ToArray();
        Assert.Equal(expected, (double)QualityAverage.Of(posed, Property.Protein, Basis.At12)!.Figure.StandardUncertainty!.Value, 9);
        Assert.Equal(expected, (double)QualityAverage.Of(posed, Property.FallingNumber, Basis.At12)!.Figure.StandardUncertainty!.Value, 9);
        Assert.Null(QualityAverage.Of([Of("T", "F", 22_000m, 12_000m), .. posed], Property.Protein, Basis.At12)!.Figure.StandardUncertainty);
    }

    [Fact]
    public void Average_AnyLoads_LiesBetweenLeastAndMost() => AnyLoads.Sample(loads =>
    {
        var mean = QualityAverage.Of(loads, Property.Protein, Basis.At12)!.Figure.Value;
        var read = loads.Select(l => l.Read(Property.Protein)!.Value).ToArray();
        Assert.InRange(mean, read.Min() - 1e-9m, read.Max() + 1e-9m);
    }, iter: 100);

    [Fact]
    public void Average_LoadsInAnotherOrder_IsTheSame() => AnyLoads.Sample(loads =>
        Num.Near(QualityAverage.Of(loads, Property.Protein, Basis.At12)!.Figure.Value, QualityAverage.Of([.. loads.Reverse()], Property.Protein, Basis.At12)!.Figure.Value, 1e-9m), iter: 50);

    [Fact]
    public void Statement_VoidedAndUnsettledLoads_AreCountedAndNotPaid()
    {
        var voided = Worked.Paid(PaymentModel.Settle(Worked.Account(), "Ines")) with { Voided = new Happening(new FactId(9), new PlaceId(1), Worked.At, HappeningKind.Voided, "wrong field") };
        var unread = Worked with { Readings = [.. Worked.Readings.Where(r => r.What != Property.Protein)] };
        var all = Assert.Single(Statement.Of([Worked, voided, unread], Day, Day, Basis.At12)).All;
        Assert.Equal((3, 2, 1), (all.Accounts.Count, all.Standing.Count, all.Settled.Count));
        Assert.Equal((Dollars(6_487.58m), Dollars(6_487.58m), Dollars(0m)), (all.Gross!.Value, all.Paid!.Value, all.Left!.Value));
        Assert.Equal(Worked.Net + Worked.Net, all.Net);
    }

    [Fact]
    public void Statement_OutsideTheSpan_IsEmpty() => Assert.Empty(Statement.Of([Worked], Day.PlusDays(1), Day.PlusDays(2), Basis.At12));

    // By hand from the prices: all at 12.0 % moisture and no dockage, so the tonne of net pays (6.20 + premium) × 36.7437; premiums 0.64, 0.25, 0.
    [Fact]
    public void Season_ThreeFields_AreRankedWithinTheirDistrict()
    {
        var report = Assert.Single(SeasonReport.Of(
            [Of("A", "F1", 22_000m, 12_000m, protein: 12.0m), Of("B", "F2", 22_000m, 12_000m, protein: 13.0m), Of("C", "F3", 22_000m, 12_000m, protein: 11.0m), Of("D", "F9", 22_000m, 12_000m, protein: 15m, district: "Lowmere")], Day, Day, Basis.At12));
        Assert.Equal([("F9 · Larkspur · HW", 1, 1), ("F2 · Larkspur · HW", 1, 3), ("F1 · Larkspur · HW", 2, 3), ("F3 · Larkspur · HW", 3, 3)], report.Fields.Select(f => (f.Group.Name, f.Rank!.Value, f.Of)));
        var best = report.Fields.Single(f => f.Group.Name.StartsWith("F2", StringComparison.Ordinal));
        Num.Near(1.0m, best.ProteinOverMean!.Value, 1e-9m);
        Num.Near(6.84m * 36.7437m, best.Group.EachTonne!.Value.Amount, 0.01m);
        Assert.Equal("251.33 USD for a tonne of net, 23.52 above the base price of 227.81: protein scale +23.52.", best.Words);
        Assert.Equal(["Lowmere · HW", "Northledge · HW"], report.Districts.Select(d => d.Group.Name));
        Assert.Equal(Mass.FromTonnes(40m), Assert.Single(report.Varieties).Group.Net);
        Assert.Equal(report.All.Gross!.Value.Amount, report.Districts.Sum(d => d.Group.Gross!.Value.Amount));
    }
}
