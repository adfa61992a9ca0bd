using CsCheck;
using Evengrist.Quantities;
using Evengrist.Streams;

namespace Evengrist.Tests.Streams;

/// <summary>Ash curve, cuts and the divide of an invented table, by arithmetic done beside the code.</summary>
public sealed class AshCurveTests
{
    // Invented streams of the usual shape, at 14 % moisture; sums and cuts derived by hand.
    private static readonly StreamTable Fourteen = new(
    [
        S("1M", 14, 0.36, 10.6), S("2M", 11.5, 0.38, 10.7), S("1MF", 8, 0.39, 10.4), S("3M", 9, 0.42, 11), S("GR", 4, 0.46, 12), S("B2", 6, 0.47, 12.4), S("B1", 3, 0.48, 11.6),
        S("4M", 5.5, 0.52, 11.3), S("B3", 5, 0.60, 13.9), S("5M", 3.5, 0.72, 11.7), S("B4", 2, 0.95, 15.2), S("6M", 2, 1.10, 12.3), S("BF", 1.5, 1.60, 14.8), S("7M", 1, 1.95, 13.2),
    ], Basis.At14);

    [Fact]
    public void Points_AreTheSumsOfTheWorkedTable()
    {
        var curve = AshCurve.Of(Fourteen);
        (double Yield, double Ash, double Protein)[] expected =
        [
            (14, 0.36, 10.6), (25.5, 0.3690, 10.645), (33.5, 0.3740, 10.587), (42.5, 0.3838, 10.674), (46.5, 0.3903, 10.788), (52.5, 0.3994, 10.972), (55.5, 0.4038, 11.006),
            (61, 0.4143, 11.033), (66, 0.4283, 11.250), (69.5, 0.4430, 11.273), (71.5, 0.4572, 11.383), (73.5, 0.4747, 11.407), (75, 0.4972, 11.475), (76, 0.5163, 11.498),
        ];
        Assert.Equal(expected.Length, curve.Points.Count);
        Assert.All(curve.Points.Zip(expected), p =>
        {
            Assert.Equal(p.Second.Yield, p.First.Together.Yield, 3);
            Assert.InRange(p.First.Together.AshPercent - p.Second.Ash, -0.00006, 0.00006);
            Assert.InRange(p.First.Together.ProteinPercent!.Value - p.Second.Protein, -0.0006, 0.0006);
        });
        Assert.Equal(1, curve.Points[^1].ShareOfFlour, 12);
    }

    [Theory]
    [InlineData(0.40, "B1", 0.375, 52.875)]
    [InlineData(0.45, "B4", 0.970, 70.470)]
    [InlineData(0.50, "7M", 0.1448, 75.1448)]
    public void At_AnAsh_DividesTheStreamOfTheWorkedTable(double ash, string stream, double amount, double yield)
    {
        var cut = AshCurve.Of(Fourteen).At(ash)!;
        Assert.Equal(stream, cut.Divided!.Code);
        Assert.Equal(amount, cut.DividedYield, 3);
        Assert.Equal(yield, cut.Flour.Yield, 3);
        Assert.Equal(ash, cut.Flour.AshPercent, 12);
    }

    [Fact]
    public void At_LessAshThanAnyStreamOrMoreThanAll_IsNothingOrAllOfIt()
    {
        var curve = AshCurve.Of(Fourteen);
        Assert.Null(curve.At(0.3));
        Assert.Null(curve.At(0.9)!.Divided);
        Assert.Equal(curve.Straight, curve.At(0.9)!.Flour);
    }

    [Fact]
    public void Curve_OfAnyTable_RisesAndAddsUp() => Gen.Select(Gen.Double[0.1, 10], Gen.Double[0.2, 3]).Array[1, 12].Sample(streams =>
    {
        var curve = AshCurve.Of(new StreamTable([.. streams.Select((s, i) => new MillStream($"S{i}", s.Item1 * 8 / streams.Length, s.Item2))], Basis.Dry));
        Assert.All(curve.Points.Zip(curve.Points.Skip(1)), p => Assert.True(p.Second.Together.AshPercent >= p.First.Together.AshPercent - 1e-12));
        foreach (var ash in streams.Select(s => s.Item2).Append(1.0))
        {
            Assert.True(curve.At(ash) is not { } cut ? curve.Points[0].Stream.AshPercent > ash
                : cut.Flour.AshPercent <= ash + 1e-9 && cut.DividedYield >= -1e-9 && cut.DividedYield <= (cut.Divided?.Yield ?? 0) + 1e-9);
        }

        Assert.Equal(streams.Sum(s => s.Item1 * 8 / streams.Length), curve.Straight.Yield, 1e-9);
        Assert.Null(curve.Straight.ProteinPercent);
    });

    // The demonstration mill's survey, invented; the sums derived by hand.
    [Fact]
    public void Sums_OfTheDemonstrationsSurvey_ArePatentAndClears()
    {
        StreamTable survey = new(
        [
            S("1M", 14, .37, 11), S("2M", 12.5, .39, 11.1), S("1MF", 8, .40, 11.2), S("SZ1", 6.5, .42, 11), S("3M", 7, .44, 11.5), S("2B", 4.2, .50, 13.3), S("SZ2", 3.2, .52, 11.4), S("1B", 3, .52, 12.6), S("4M", 4.5, .52, 11.9),
            S("5M", 3.5, .64, 12.2), S("3B", 2.6, .68, 14.6), S("6M", 2.2, .82, 12.6), S("4B", 1.4, .98, 16), S("1T", 1, 1.10, 13.2), S("7M", 1.3, 1.15, 13), S("5B", .7, 1.30, 16.6), S("BRD", 1.3, 1.45, 15.8), S("SHD", .8, 1.60, 15),
        ], Basis.At14);
        var curve = AshCurve.Of(survey);
        Close(curve.Points.Single(p => p.Stream.Code == "3B").Together, 69.0, 0.446, 11.58);
        Close(curve.Straight, 77.7, 0.522, 11.88);
        Close(StreamSum.Of(survey.Streams.Where(s => s.Code is "6M" or "4B" or "1T")), 4.6, 0.930, 13.77);
        Close(StreamSum.Of(survey.Streams.Where(s => s.Code is "7M" or "5B" or "BRD" or "SHD")), 4.1, 1.359, 14.89);

        static void Close(StreamSum sum, double yield, double ash, double protein)
        {
            Assert.InRange(sum.Yield - yield, -0.1, 0.1);
            Assert.InRange(sum.AshPercent - ash, -0.001, 0.001);
            Assert.InRange(sum.ProteinPercent!.Value - protein, -0.01, 0.01);
        }
    }

    // 21 CFR 137.105(a); worked by hand from its formula.
    [Theory]
    [InlineData(12.0, 0.9010, 0.50, true)]
    [InlineData(11.9, 0.896, 0.50, true)]
    [InlineData(14.2, 1.011, 0.80, true)]
    [InlineData(13.77, 0.989, 0.930, true)]
    [InlineData(14.6, 1.031, 1.22, false)]
    [InlineData(14.89, 1.046, 1.359, false)]
    public void Identity_MostAsh_IsThatOfTheRule(double protein, double most, double ash, bool keeps)
    {
        Assert.InRange(FlourIdentity.MostAshPercent(protein, Basis.At14) - most, -0.0006, 0.0006);
        Assert.Equal(keeps, FlourIdentity.Keeps(new StreamSum(5, ash, protein), Basis.At14));
        Assert.Equal(1.0477, FlourIdentity.MostAshPercent(12 / 0.86, Basis.Dry), 4);
    }

    [Fact]
    public void Faults_WhatCannotBe_IsNamed()
    {
        Assert.Contains("more flour than wheat", Assert.Single(new StreamTable([S("A", 80, 0.4, 11), S("B", 60, 0.5, 11)], Basis.At14).Faults()), StringComparison.Ordinal);
        Assert.Contains("ash lies above 0", Assert.Single(new StreamTable([S("A", 8, -0.4, 11)], Basis.At14).Faults()), StringComparison.Ordinal);
        Assert.Contains("2 times", Assert.Single(new StreamTable([S("A", 8, 0.4, 11), S("A", 6, 0.5, 11)], Basis.At14).Faults()), StringComparison.Ordinal);
        Assert.Contains("moisture basis", Assert.Single(new StreamTable([S("A", 8, 0.4, 11)], default).Faults()), StringComparison.Ordinal);
        Assert.Contains("0 streams", Assert.Single(new StreamTable([], Basis.At14).Faults()), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => AshCurve.Of(new StreamTable([], Basis.At14)));
    }

    private static MillStream S(string code, double yield, double ash, double protein) => new(code, yield, ash) { ProteinPercent = protein };
}
