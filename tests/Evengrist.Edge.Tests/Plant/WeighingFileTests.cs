using System.Text;
using Evengrist.Packing.Products;
using Evengrist.Plant;
using Evengrist.Plant.Cases;
using NodaTime;

namespace Evengrist.Edge.Tests.Plant;

public sealed class WeighingFileTests
{
    private static readonly WeighingSpec Spec = new(DateTimeZoneProviders.Tzdb["America/Denver"], Instant.FromUtc(2026, 2, 1, 0, 0), [
        new Product("WB-25", "White bread flour", "WB", PackKind.Bag, 25_000) { PerPallet = 40, TareGrams = 180 },
        new Product("AP-5LB", "All-purpose", "AP", PackKind.Retail, 2_268) { PerPallet = 400 },
        new Product("WB-BULK", "loose", "WB", PackKind.Bulk),
    ], ["L1", "L2"]);

    [Fact]
    public void Read_Example_IsAnHourOfThreePackages()
    {
        var file = Read(WeighingColumns.Example).Value;
        var hour = Assert.Single(file.Hours);
        Assert.Equal(("L1", "WB-25", Instant.FromUtc(2026, 1, 14, 17, 0), 3), (hour.Line, hour.Product, hour.From, file.Rows));
        Assert.Equal([25_044.5, 25_018.0], hour.Passed.Select(p => p.NetGrams));
        Assert.Empty(file.Questions);
    }

    [Theory]
    [InlineData("net [kg]", "25.0445", 252_245)]
    [InlineData("gross [kg]", "25.2245", 252_245)]
    [InlineData("gross [lb]", "55.61", 252_243)] // 55.61 lb = 25 224.27 g
    public void Read_OtherUnits_AreGrams(string heading, string weight, int tenths) =>
        Assert.Equal((tenths, 1_800), Read($"moment,line,product,{heading}\n2026-01-14T10:55:07Z,l1,wb-25,{weight}").Value.Hours[0].Packages.Select(p => (p.GrossTenths, p.TareTenths)).Single());

    [Fact]
    public void Read_HeadingsOfAnotherProgram_AreTakenWhereItIsSaidWhatTheyMean()
    {
        var (called, fault) = WeighingSpec.ReadCalled("Zeit = moment\nLinie=line; Artikel = product\nBrutto = gross [kg]");
        Assert.Null(fault);
        Assert.Equal(252_245, Read("# decimal: comma\nZeit;Linie;Artikel;Brutto\n2026-01-14 10:55:07;L1;WB-25;25,2245", Spec with { Called = called }).Value.Hours[0].Packages[0].GrossTenths);
        Assert.Contains("does not say", WeighingSpec.ReadCalled("Zeit moment").Fault, StringComparison.Ordinal);
    }

    // Each of one row alike but for what is wrong; the fault has the line and column of it.
    [Theory]
    [InlineData("moment;line;product;weight [g]", "2026-01-14 10:55;L1;WB-25;25224", 1, 4, "one of the headings")]
    [InlineData("moment;line;product;gross", "2026-01-14 10:55;L1;WB-25;25224", 1, 4, "the unit with it")]
    [InlineData("moment;line;product;gross [g];net [g]", "2026-01-14 10:55;L1;WB-25;25224;25000", 1, 5, "not both")]
    [InlineData("moment;line;product;gross [g];tare [g]", "2026-01-14 10:55;L1;WB-25;180;25224", 2, 4, "above that of the empty package")]
    [InlineData("moment;line;product;gross [g]", "14.1.2026 10:55;L1;WB-25;25224", 2, 1, "year first")]
    [InlineData("moment;line;product;gross [g]", "2026-03-14 10:55;L1;WB-25;25224", 2, 1, "in the future")]
    [InlineData("moment;line;product;gross [g]", "2026-01-14 10:55;L7;WB-25;25224", 2, 2, "a packing line of the ledger")]
    [InlineData("moment;line;product;gross [g]", "2026-01-14 10:55;L1;WB-2S;25224", 2, 3, "such as WB-25")]
    [InlineData("moment;line;product;gross [g]", "2026-01-14 10:55;L1;WB-BULK;25224", 2, 3, "loose")]
    [InlineData("moment;line;product;gross [g]", "2026-01-14 10:55;L1;AP-5LB;2300", 2, 4, "empty pack of this product was not weighed")]
    [InlineData("moment;line;product;gross [g]", "2026-01-14 10:55;L1;WB-25;", 2, 4, "the cell is empty")]
    [InlineData("moment;line;product;gross [g]", "2026-01-14 10:55;L1;WB-25;-5", 2, 4, "0 to 3 t")]
    [InlineData("moment;line;product;gross [kg]", "2026-01-14 10:55;L1;WB-25;25224", 2, 4, "are these grams under a heading that says otherwise?")]
    [InlineData("moment;line;product;gross [g];rejected", "2026-01-14 10:55;L1;WB-25;25224;perhaps", 2, 5, "thrown out")]
    public void Read_Wrong_SaysWhereAndWhat(string heading, string row, int line, int column, string says)
    {
        var fault = Assert.Single(Read($"{heading}\n{row}").Faults);
        Assert.Equal((line, column), (fault.Line, fault.Column));
        Assert.Contains(says, $"{fault}", StringComparison.Ordinal);
    }

    [Fact]
    public void Read_GramsUnderKilograms_AreAskedAbout()
    {
        var (line, words) = Assert.Single(Read("moment;line;product;net [kg]\n2026-01-14 10:55:07;L1;WB-25;25.01\n2026-01-14 10:55:14;L1;WB-25;2501").Value.Questions);
        Assert.Equal(3, line);
        Assert.Contains("is the product right, and the unit", words, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("look like kilograms under a heading that says grams", Read("moment;line;product;net [g]\n2026-01-14 10:55:07;L1;WB-25;25.01").Value.Questions[0].Words, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_AQuarterOfAMillionRows_StayAsHours()
    {
        var text = new StringBuilder("moment,line,product,gross [g],tare [g],rejected\n");
        var from = Instant.FromUtc(2026, 1, 1, 0, 0);
        for (var i = 0; i < 250_000; i++)
        {
            text.Append(from + Duration.FromSeconds(i * 7)).Append(",L1,WB-25,").Append(25_200 + (i % 31)).Append(",180,\n");
        }

        var file = Read(text.ToString()).Value;
        Assert.Equal(250_000, file.Rows);
        Assert.Equal(250_000, file.Hours.Sum(h => h.Packages.Count));
        Assert.Equal(487, file.Hours.Count); // 1 750 000 s, from the first to the last begun hour
    }

    private static Parsed<WeighingFile> Read(string text, WeighingSpec? spec = null) => WeighingFile.Read(new MemoryStream(Encoding.UTF8.GetBytes(text)), spec ?? Spec);
}
