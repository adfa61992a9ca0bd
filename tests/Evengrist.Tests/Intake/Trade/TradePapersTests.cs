using Evengrist.Intake.Trade;
using NodaTime;

namespace Evengrist.Tests.Intake.Trade;

public sealed class TradePapersTests
{
    private static readonly Certificate First = new() { Code = "scale 1", Instrument = "truck scale", Number = "W-1", Body = "County sealer", From = new(2025, 1, 1), Until = new(2025, 8, 18) };
    private static readonly Certificate Next = First with { Number = "W-2", From = new(2025, 8, 20), Until = new(2026, 8, 19) };

    private static readonly TradePapers Papers = new(
        [new Party { Code = "F02", Name = "Drumsallow" }, new Party { Code = "F02", Name = "Drumsallow Farm" }, new Party { Code = "H1", Name = "Pell Haulage" }],
        [new FieldSheet { Code = "DS-2", Grower = "F02", Variety = "Larkspur" }, new FieldSheet { Code = "DS-2", Grower = "F02", Variety = "Ouzel", From = new(2026, 7, 1) }],
        [new Vehicle { Code = "trailer 23", Carrier = "H1" }],
        [First, Next]);

    [Fact]
    public void Party_TwoVersions_TheNewestCounts() => Assert.Equal("Drumsallow Farm", Papers.Party(" f02 ")!.Name);

    [Theory]
    [InlineData("2025-07-09", "Larkspur")]
    [InlineData("2026-06-30", "Larkspur")]
    [InlineData("2026-07-01", "Ouzel")]
    public void FieldOn_SheetsOfTwoSeasons_TheOneOfTheDay(string day, string variety) =>
        Assert.Equal(variety, Papers.FieldOn("ds-2", NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value)!.Variety);

    [Fact]
    public void CarrierOf_APlate_IsItsParty()
    {
        Assert.Equal("Pell Haulage", Papers.CarrierOf("trailer 23")!.Name);
        Assert.Null(Papers.CarrierOf("trailer 24"));
    }

    [Theory]
    [InlineData("2025-08-18", "W-1")]
    [InlineData("2025-08-19", null)]
    [InlineData("2025-08-20", "W-2")]
    [InlineData("2026-08-20", null)]
    [InlineData("2024-12-31", null)]
    public void InForce_AGapOfADay_IsNoCertificate(string day, string? number) =>
        Assert.Equal(number, Papers.InForce("SCALE 1", NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value)?.Number);

    [Fact]
    public void Certificates_OneNumberTwice_TheNewerCounts()
    {
        var withdrawn = new TradePapers([], [], [], [First, First with { Until = new(2025, 3, 1) }]);
        Assert.Null(withdrawn.InForce("scale 1", new(2025, 3, 2)));
        Assert.Equal(new LocalDate(2025, 3, 1), Assert.Single(withdrawn.Certificates).Until);
    }

    [Theory]
    [InlineData("2025-08-18", CertificateState.EndsSoon, 0)]
    [InlineData("2025-08-19", CertificateState.Expired, -1)]
    [InlineData("2025-08-20", CertificateState.InForce, 364)]
    [InlineData("2024-12-31", CertificateState.NotYet, null)]
    [InlineData("2026-07-20", CertificateState.EndsSoon, 30)]
    public void Watch_ADay_SaysHowItStands(string day, CertificateState state, int? left)
    {
        var watch = Assert.Single(InstrumentWatch.Of(Papers, [], NodaTime.Text.LocalDatePattern.Iso.Parse(day).Value));
        Assert.Equal((state, left), (watch.State, watch.DaysLeft));
    }

    [Fact]
    public void Watch_ARenewalWithoutAGap_CarriesTheDaysOn()
    {
        var papers = new TradePapers([], [], [], [First, Next with { From = new(2025, 8, 19) }]);
        Assert.Equal((CertificateState.InForce, 366), (InstrumentWatch.Of(papers, [], new(2025, 8, 18))[0].State, InstrumentWatch.Of(papers, [], new(2025, 8, 18))[0].DaysLeft));
    }

    public static TheoryData<string, string> Broken() => new()
    {
        { """{"code":"scale 1","instrument":"truck scale","number":"1","body":"x","from":"2025-08-18","until":"2025-08-17"}""", "ends on 2025-08-17 before it begins" },
        { """{"code":"","instrument":"truck scale","number":"1","body":"x","from":"2025-08-18","until":"2025-08-19"}""", "needs its instrument's code" },
        { """{"code":"scale 1","instrument":"truck scale","number":"1","body":"x","from":"18.8.2025","until":"2025-08-19"}""", "A date is written" },
        { """{"code":"scale 1","number":"1","body":"x","from":"2025-08-18","until":"2025-08-19"}""", "instrument" },
        { """{"code":"scale 1","instrument":"truck scale","number":"1","body":"x","from":"2025-08-18","until":"2025-08-19","colour":"red"}""", "colour" },
        { "null", "read null" },
        { "[", "" },
    };

    [Theory]
    [MemberData(nameof(Broken))]
    public void TryRead_BrokenCertificate_SaysWhat(string json, string reason)
    {
        Assert.False(PaperText.TryRead<Certificate>(json, out var paper, out var faults));
        Assert.Null(paper);
        Assert.Contains(reason, string.Join(" ", faults), StringComparison.Ordinal);
    }

    [Fact]
    public void Write_ReadBack_LosesNothing()
    {
        Assert.True(PaperText.TryRead<Certificate>(PaperText.Write(First), out var read, out _));
        Assert.Equal(First, read);
        var field = new FieldSheet { Code = "DS-2", Grower = "F02", Variety = "Larkspur", Hectares = 61.5m, From = new(2025, 7, 1) };
        Assert.True(PaperText.TryRead<FieldSheet>(PaperText.Write(field), out var sheet, out _));
        Assert.Equal(field, sheet);
    }
}
