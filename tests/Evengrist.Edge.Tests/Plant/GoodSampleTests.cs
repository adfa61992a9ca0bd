using Evengrist.Ledger;
using Evengrist.Plant.Imports;
using Evengrist.Quantities;
using NodaTime;
using NodaTime.Text;

namespace Evengrist.Edge.Tests.Plant;

/// <summary>The small mill in files, an invented mill; what must come of it was added up by hand from the files.</summary>
public sealed class GoodSampleTests
{
    [Fact]
    public void Import_WholeSmallMill_StandsAtTheStocksAddedUpByHand()
    {
        var book = SmallMill.Book();
        Mass Stock(string code) => book.StockOf(book.Named(code).Id);
        // S1: nets 15260 + 14880 + 15490 + 19780 + 14810 (week 2) in, 12000 out. S2: 13320 + 13080 + 13225 in, 4000 out. S3: 12000 in, 2000 out.
        Assert.Equal(Mass.FromKilograms(68_220m), Stock("S1"));
        Assert.Equal(Mass.FromKilograms(35_625m), Stock("S2"));
        Assert.Equal(Mass.FromKilograms(10_000m), Stock("S3"));
        Assert.Equal(Mass.FromKilograms(3_540.5m), Stock("TEMPER"));
        Assert.Equal(Mass.FromKilograms(8_050m), Stock("F1"));
        Assert.Equal(Mass.FromKilograms(200m), Stock("PACK"));
        Assert.Equal(Mass.FromKilograms(15_330m), Stock("25-0009"));
        Assert.Equal(Mass.Zero, book.Places.Aggregate(Mass.Zero, (sum, place) => sum + book.StockOf(place.Id)));
    }

    [Fact]
    public void Import_IntakeWithDecimalComma_ReadingsKeepValueUnitBasisAndTime()
    {
        var book = SmallMill.Book();
        var truck = book.Named("25-0001");
        var protein = book.ReadingsOn(truck.Id).Single(r => r.What == Property.Protein);
        Assert.Equal((12.8m, "%", Basis.At12, 0.15m, "NIR", "meter 2"), (protein.Value, protein.Unit, protein.Basis, protein.StandardUncertainty, protein.Method, protein.Instrument));
        Assert.Equal(InstantPattern.ExtendedIso.Parse("2025-06-02T06:10:00Z").Value, protein.At);
        Assert.Equal("FOLD 1", truck.Name);
        Assert.Equal(24_380m, book.ReadingsOn(truck.Id).Single(r => r.What == Property.GrossWeight).Value);
    }

    [Fact]
    public void Import_Workbook_DatesAndNumbersComeAsShown()
    {
        var batch = SmallMill.ReadFile(Repository.Sample("small-mill", "intake-week-2.xlsx"), ImportKind.Intake).Value;
        var loaded = batch.Drafts.OfType<Move>().First(m => m.To == "25-0008");
        Assert.Equal(Mass.FromKilograms(13_225m), loaded.Mass);
        Assert.Equal(InstantPattern.ExtendedIso.Parse("2025-06-09T07:05:00Z").Value, loaded.At);
        Assert.Equal(13.2m, batch.Drafts.OfType<Measure>().Single(m => m.On == "25-0007" && m.What == Property.Protein).Value);
    }

    [Fact]
    public void Import_Bins_RowMayNameAPlaceOpenedLater()
    {
        var batch = SmallMill.Read("code,kind,feeds\nPIT,pit,B1\nB1,bin,\n", ImportKind.Bins).Value;
        Assert.Equal([typeof(OpenPlace), typeof(OpenPlace), typeof(Connect)], batch.Drafts.Select(d => d.GetType()));
        Assert.Equal([2, 3, 2], batch.Rows.Select(r => r.Line));
    }

    [Theory]
    [InlineData("mass [kg]", "1500")]
    [InlineData("mass [t]", "1.5")]
    [InlineData("mass [lb]", "3306.93393")]
    public void Import_MassInAnyUnit_IsTheSameMass(string heading, string cell)
    {
        // 1 lb = 453.59237 g by definition (NIST Handbook 44, appendix C): 3306.93393 lb = 1 500 000.0 g to the gram.
        var batch = SmallMill.Read($"from,to,{heading},at [UTC]\nA,B,{cell},2025-06-01 06:00\n", ImportKind.Movements).Value;
        Assert.Equal(Mass.FromKilograms(1500m), Assert.IsType<Move>(Assert.Single(batch.Drafts)).Mass);
    }

    [Fact]
    public void Rehearse_GoodFileAgainstItsMill_FindsNothing()
    {
        var batch = SmallMill.Read("from,to,mass [kg],at [UTC]\nS1,MIX,1000,2025-06-10 06:00\nMIX,CLEAN,1000,2025-06-10 06:00\n", ImportKind.Movements).Value;
        Assert.Empty(Rehearsal.Of(SmallMill.Book(), batch, "Ada", SmallMill.Recorded));
    }

    [Fact]
    public void Rehearse_Always_LeavesTheBookAsItWas()
    {
        var book = SmallMill.Book();
        var (last, stock) = (book.Last, book.StockOf(book.Named("S1").Id));
        Rehearsal.Of(book, SmallMill.Read("from,to,mass [kg],at [UTC]\nS1,MIX,999000,2025-06-10 06:00\n", ImportKind.Movements).Value, "Ada", SmallMill.Recorded);
        Assert.Equal((last, stock), (book.Last, book.StockOf(book.Named("S1").Id)));
        Assert.True(book.Newest < SmallMill.Recorded - Duration.FromDays(1));
    }
}
