using Evengrist.Ledger;
using Evengrist.Mix.Relations;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Tests.Mix;

public sealed class RelationFittingTests
{
    private static readonly Instant Begin = Instant.FromUtc(2026, 1, 12, 6, 0);

    private static RelationPoint Point(int n, double wheat, double read, double wheatError = 0, double readError = 0.1) =>
        new("WB", Property.Protein, $"S{n}", Begin + Duration.FromDays(n), wheat, wheatError, read, readError, 8);

    private static RelationPoint[] Line(IReadOnlyList<double> off, double step = 0.5) => [.. off.Select((e, i) => Point(i, 12 + (step * i), 12 + (step * i) - 1.3 + e))];

    /// <summary>By hand: what is off is square to 1 and to the wheat, so that the line stays flour = wheat − 1.3; s = √(0.10/3); the slope's error 0.1/√2.5, widened by √(10/3); Student's t of 3 is 3.182 (printed tables).</summary>
    [Fact]
    public void Of_RunsWorkedByHand_GivesLineAndItsUncertainties()
    {
        var fit = Assert.IsType<RelationFitted>(RelationFitting.Of("WB", Property.Protein, Line([0.1, -0.2, 0, 0.2, -0.1])));
        Assert.Equal(1, fit.Line.Slope, 9);
        Assert.Equal(-1.3, fit.Line.Offset, 7);
        Assert.Equal(Math.Sqrt(0.1 / 3), fit.Residual, 9);
        Assert.Equal(3.182 * Math.Sqrt(10 / 3.0) * 0.1 / Math.Sqrt(2.5), fit.SlopeBand, 3);
        Assert.Equal((12, 14), (fit.LeastWheat, fit.MostWheat));

        // The line's own error at either end, 0.1·√(1/5 + 1/2.5) widened, is part of what a run's flour is unsure by.
        Assert.Equal(Math.Sqrt((0.1 / 3) + (0.01 * 0.6 * 10 / 3)), fit.Uncertainty, 9);
        var relation = fit.Relation(DateTimeZone.Utc);
        Assert.Equal((-1.3, 1.0, true), (relation.Intercept, relation.Slope, relation.IsFitted));
        Assert.Contains("5 runs of 2026-01-12 to 2026-01-16", relation.Words, StringComparison.Ordinal);
        Assert.Null(relation.Beyond(13));
        Assert.Contains("14.6 % 12mb lies outside 12 to 14", relation.Beyond(14.6)!, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_TooLittle_SaysWhatIsMissing()
    {
        string Reason(params RelationPoint[] points) => Assert.IsType<RelationNotFitted>(RelationFitting.Of("WB", Property.Protein, points)).Reason;
        Assert.Contains("Too few: 0 of at least 5 runs", Reason(), StringComparison.Ordinal);
        Assert.Contains("Too few: 4 of at least 5 runs", Reason(Line([0, 0, 0, 0])), StringComparison.Ordinal);
        Assert.Contains("The wheat hardly differed", Reason(Line([0, 0, 0, 0, 0], step: 0)), StringComparison.Ordinal);
        Assert.Contains("The wheat hardly differed", Reason([.. Line([0, 0, 0, 0, 0], step: 0.02).Select(p => p with { WheatUncertainty = 0.12 })]), StringComparison.Ordinal);
        Assert.Contains("does not follow the wheat's", Reason([.. Line([0, 0, 0, 0, 0]).Select((p, i) => p with { Read = i % 2 == 0 ? 12 : 11.8 })]), StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WeighsReadingsByTheirUncertaintyAndCarriesThemToTheBasis()
    {
        Reading Of(decimal value, Basis basis, decimal? error) => new(new FactId(1), new PlaceId(1), Begin, Property.Protein, value, "%", basis, "NIR", "N1", error);

        // By hand: weights 1/0.1² = 100 and 1/0.2² = 25, so (12·100 + 11·25)/125 = 11.8; u = 1/√125. On 14mb a dry value is 0.86 of itself.
        var read = FlourRead.Of([Of(12m, Basis.At14, 0.1m), Of(11m, Basis.At14, 0.2m)], Basis.At14)!;
        Assert.Equal((11.8, 2), (Math.Round(read.Value, 9), read.Count));
        Assert.Equal(1 / Math.Sqrt(125), read.StandardUncertainty, 9);
        Assert.Equal(12 * 0.86, FlourRead.Of([Of(12m, Basis.Dry, 0.1m)], Basis.At14)!.Value, 9);

        // Without a stated ±: three are needed, s = 0.2, u = 0.2/√3.
        Assert.Null(FlourRead.Of([Of(12m, Basis.At14, null), Of(11.8m, Basis.At14, 0.1m)], Basis.At14));
        Assert.Equal(0.2 / Math.Sqrt(3), FlourRead.Of([Of(12m, Basis.At14, null), Of(11.8m, Basis.At14, 0.1m), Of(12.2m, Basis.At14, null)], Basis.At14)!.StandardUncertainty, 9);
        Assert.Null(FlourRead.Of([], Basis.At14));
    }

    [Fact]
    public void Curve_OfFlowsAndLoads_IsReadBothWays()
    {
        Instant At(double hours) => Begin + Duration.FromHours(hours);
        var curve = new MassCurve([(At(0), At(10), 100), (At(4), At(4), 50), (At(20), At(30), 100)]);
        Assert.Equal([0, 20, 90, 150, 150, 200, 250], new double[] { -1, 2, 4, 10, 15, 25, 40 }.Select(h => Math.Round(curve.By(At(h)), 6)));
        Assert.Equal(At(2), curve.When(20));
        Assert.Equal(At(4), curve.When(60));
        Assert.Equal(At(25), curve.When(200));
        Assert.Null(curve.When(251));
        Assert.Null(new MassCurve([]).When(1));
    }

    [Fact]
    public void Paper_ThereAndBack_IsTheSame()
    {
        var relation = new MillRelation("WB", new(Property.Protein, Basis.At12, Basis.At14, -1.3, 1, 0.15, false, "a book") { LeastWheat = 11, MostWheat = 14 });
        Assert.True(MillRelation.TryRead(relation.ToJson(), out var read, out _));
        Assert.Equal(relation, read);
        Assert.Equal("WB Protein", read.Code);
    }

    [Theory]
    [InlineData("\"slope\":1", "\"slope\":0", "a slope other than 0")]
    [InlineData("\"uncertainty\":0.15", "\"uncertainty\":-0.15", "an uncertainty of 0 or more")]
    [InlineData("\"flour\":\"WB\"", "\"flour\":\" \"", "Say which flour")]
    [InlineData("a book", "", "Say where it comes from")]
    [InlineData("\"what\":\"Protein\"", "\"what\":\"Moisture\"", "A relation is kept for protein, ash")]
    [InlineData("\"what\":\"Protein\"", "\"what\":\"FallingNumber\"", "has no moisture basis")]
    [InlineData("\"wheatBasis\":\"12mb\"", "\"wheatBasis\":\"none\"", "needs a moisture basis")]
    [InlineData("\"leastWheat\":11", "\"leastWheat\":15", "from a least to a most")]
    [InlineData("\"slope\":1,", "", "slope")]
    [InlineData("{\"flour\"", "{\"flower\":1,\"flour\"", "flower")]
    public void Paper_ThatCannotBe_IsRefusedInWords(string was, string becomes, string says)
    {
        var json = new MillRelation("WB", new(Property.Protein, Basis.At12, Basis.At14, -1.3, 1, 0.15, false, "a book") { LeastWheat = 11, MostWheat = 14 }).ToJson();
        Assert.Contains(was, json, StringComparison.Ordinal);
        Assert.False(MillRelation.TryRead(json.Replace(was, becomes, StringComparison.Ordinal), out _, out var faults));
        Assert.Contains(says, string.Join(" ", faults), StringComparison.Ordinal);
    }
}
