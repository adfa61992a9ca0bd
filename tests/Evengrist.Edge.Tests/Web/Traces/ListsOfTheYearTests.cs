using System.Globalization;
using System.Text.RegularExpressions;
using Microsoft.VisualBasic.FileIO;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>Lists of the demonstration's year: each says what its page says.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class ListsOfTheYearTests(DemonstrationSite site)
{
    [Fact]
    public async Task StreamCurve_IsThePagesKeptOrTyped()
    {
        var kept = await RowsAsync("/streams?unit=UA&list=stream-curve");
        // The same figures as on the page, reckoned apart from this program: 77.7 % of the wheat at 0.522 % ash.
        Assert.Equal((77.7, 0.522), (Math.Round(Number(kept[^1]["up to here, of the wheat, reckoned [% = P1]"]), 2), Math.Round(Number(kept[^1]["ash up to here, reckoned [% = P1]"]), 3)));
        var typed = await RowsAsync("/streams?list=stream-curve&basis=14mb&survey=" + Uri.EscapeDataString("1M,40,0.4,,HG\n2M,20,0.8,,HG"));
        Assert.Equal((2, 0.5333, "HG"), (typed.Count, Math.Round(Number(typed[1]["ash up to here, reckoned [% = P1]"]), 4), typed[1]["flour"])); // (40·0.4 + 20·0.8)/60
    }

    [Fact]
    public async Task ChartPoints_AreThoseOfTheChartWithLimitsThreeSigmaOff()
    {
        var points = await RowsAsync("/laboratory/charts?chart=UA%20WB%20Protein%20NIR&list=chart-points");
        var limits = (await RowsAsync("/laboratory/charts?chart=UA%20WB%20Protein%20NIR&list=chart-limits")).OrderBy(r => Number(r["version"])).Last();
        Assert.InRange(points.Count, 2, 60);
        var (centre, sigma) = (Number(limits["centre, reckoned [% = P1]"]), Number(limits["one standard deviation, reckoned [% = P1]"]));
        var target = limits["target [% = P1]"] is { Length: > 0 } wanted ? Number(wanted) : centre;
        Assert.All(points, p => Assert.Equal(target + (3 * sigma), Number(p["upper control limit, reckoned [% = P1]"]), 9)); // limits of single values lie three standard deviations off: NIST/SEMATECH handbook 6.3.2.2
        foreach (var (before, point) in points.Zip(points.Skip(1)))
        {
            Assert.Equal(Math.Abs(Number(point["value, reckoned [% = P1]"]) - Number(before["value, reckoned [% = P1]"])), Number(point["moving range, reckoned [% = P1]"]), 9);
        }
    }

    [Fact]
    public async Task BinRisks_StandInTheOrderOfTheirPageAndCablesAsTheyWereRead()
    {
        var risks = await RowsAsync("/bins/storage?list=bin-risks");
        using var client = site.Client();
        var named = Regex.Matches(await client.GetStringAsync(new Uri("/bins/storage", UriKind.Relative)), "href=\"/bins/([^\"#/]+)#storage\"").Select(m => m.Groups[1].Value).ToArray();
        Assert.NotEmpty(named);
        Assert.Equal(named, risks.Select(r => r["bin"]));
        var layers = await RowsAsync("/bins/storage?list=stored-layers");
        Assert.All(risks, r => Assert.Equal(Number(r["stock as it lies, reckoned [t = TNE]"]), layers.Where(l => l["bin"] == r["bin"]).Sum(l => Number(l["mass as it lies, reckoned [t = TNE]"])), 6));
        var (points, readings) = (await RowsAsync("/bins/storage?list=cable-points"), await RowsAsync("/bins/storage?list=cable-readings"));
        Assert.NotEmpty(points);
        Assert.All(points, p => Assert.Contains(readings, r => (r["bin"], r["cable"], r["read"], r["temperature, seen [°C = CEL]"]) == (p["bin"], p["cable"], p["read"], p["temperature, seen [°C = CEL]"])));
    }

    [Theory]
    [InlineData("/intake/contracts?list=contracts")]
    [InlineData("/intake/contracts?list=contract-scales")]
    [InlineData("/intake/bookings?list=bookings")]
    [InlineData("/milling/sheet?unit=UA&list=flow-sheet-passages")]
    [InlineData("/milling/sheet?unit=UA&list=flow-sheet-ways")]
    [InlineData("/streams/additions?list=additive-lots")]
    [InlineData("/streams/additions?list=feeder-doses")]
    [InlineData("/packing/lines?list=packing-lines")]
    [InlineData("/packing/lines?list=packaging-lots")]
    [InlineData("/packing/rework?list=rework-totes")]
    [InlineData("/packing/rework?list=rework-moves")]
    public async Task List_OfTheYear_HoldsWhatTheDemonstrationHas(string address) => Assert.NotEmpty(await RowsAsync(address));

    [Fact]
    public async Task FlowSheetWays_OfEachOutlet_AddUpToAll()
    {
        var ways = await RowsAsync("/milling/sheet?unit=UA&list=flow-sheet-ways");
        Assert.All(ways.GroupBy(w => (w["passage"], w["outlet"])), outlet => Assert.Equal(100, outlet.Sum(w => Number(w["share of the outlet [% = P1]"])), 6));
    }

    private async Task<IReadOnlyList<Dictionary<string, string>>> RowsAsync(string address)
    {
        using var client = site.Client();
        var text = await client.GetStringAsync(new Uri(address + "&as=csv", UriKind.Relative));
        using var parser = new TextFieldParser(new StringReader(text)) { Delimiters = [","], HasFieldsEnclosedInQuotes = true, TrimWhiteSpace = false };
        var heads = parser.ReadFields()!;
        List<Dictionary<string, string>> rows = [];
        while (!parser.EndOfData)
        {
            rows.Add(heads.Zip(parser.ReadFields()!).ToDictionary(p => p.First, p => p.Second));
        }

        return rows;
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
