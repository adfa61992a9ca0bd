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
    [InlineData("/intake/grades/house?list=house-classes")]
    [InlineData("/intake/limits?list=market-limits")]
    [InlineData("/intake/limits?list=house-rules")]
    [InlineData("/intake/yard?list=yard-hours")]
    [InlineData("/mix/relations?list=relation-runs")]
    [InlineData("/milling/clock?list=arrivals")]
    [InlineData("/milling/clock?list=gate-changes")]
    [InlineData("/streams/divide?unit=UA&list=divide-moves")]
    [InlineData("/streams/survey/check?unit=UA&list=survey-check")]
    [InlineData("/laboratory/methods?list=lab-methods")]
    [InlineData("/laboratory/instruments?list=lab-instruments")]
    [InlineData("/laboratory/instruments?list=instrument-calibrations")]
    [InlineData("/laboratory/legal-rules?list=legal-rules")]
    [InlineData("/laboratory/bake/blend?property=water%20absorption,%20%25&list=measured-blends")]
    [InlineData("/packing?list=packing-bins")]
    [InlineData("/packing/content?list=tare-samples")]
    [InlineData("/season/terms?list=season-demand")]
    [InlineData("/season/terms?list=season-offers")]
    [InlineData("/season/change-over?list=change-over")]
    [InlineData("/mix/sheets?list=mix-drawn")]
    [InlineData("/laboratory?list=lab-due")]
    [InlineData("/laboratory/watch?list=watch-pairs")]
    [InlineData("/dispatch?list=load-orders")]
    [InlineData("/milling/trial?list=trial-passages")]
    public async Task List_OfTheYear_HoldsWhatTheDemonstrationHas(string address) => Assert.NotEmpty(await RowsAsync(address));

    [Fact]
    public async Task FlowSheetWays_OfEachOutlet_AddUpToAll()
    {
        var ways = await RowsAsync("/milling/sheet?unit=UA&list=flow-sheet-ways");
        Assert.All(ways.GroupBy(w => (w["passage"], w["outlet"])), outlet => Assert.Equal(100, outlet.Sum(w => Number(w["share of the outlet [% = P1]"])), 6));
    }

    [Fact]
    public async Task GradeLimits_OfTheUnitedStates_AreThoseOfTheTable()
    {
        var limits = await RowsAsync("/intake/grades?standard=us-wheat&list=grade-limits");
        // 7 CFR 810.2204(a): damaged kernels, total, at most 2.0, 4.0, 7.0, 10.0 and 15.0 per cent for U.S. No. 1 to 5 (from memory).
        Assert.Equal([2, 4, 7, 10, 15], limits.Where(l => l["factor"] == "damaged kernels, total").Select(l => Number(l["limit, itself inside"])));
        Assert.All(limits, l => Assert.True(l["unit"].Length > 0));
    }

    [Fact]
    public async Task DivideFlours_Together_AreAllStreams()
    {
        var parts = await RowsAsync("/streams/divide?unit=UA&list=divide-flours");
        Assert.Contains(parts, p => p["stream"].Length > 0);
        Assert.All(parts.Where(p => p["stream"].Length > 0).GroupBy(p => p["stream"]), s => Assert.Equal(100, s.Sum(p => Number(p["share of the stream, reckoned [% = P1]"])), 6)); // nothing of a stream is lost or made
    }

    [Fact]
    public async Task MillLosses_AddUpToWhatIsUnexplained()
    {
        var masses = await RowsAsync("/ledger/balance/mill?list=mill-balance");
        var losses = await RowsAsync("/ledger/balance/mill?list=mill-losses");
        double Sum(string kind) => masses.Where(m => m["kind"].StartsWith(kind, StringComparison.Ordinal)).Sum(m => Number(m["mass as it lay, reckoned [t = TNE]"]));
        Assert.Equal(Sum("in") - Sum("out") - Sum("lies"), losses.Sum(l => Number(l["share of it, reckoned [t = TNE]"])), 6);
    }

    [Fact]
    public async Task SettlementLines_EndWithThePayOfTheAccount()
    {
        var lines = (await RowsAsync("/intake/statement?list=settlement-lines")).ToLookup(r => r["ticket"]);
        var accounts = (await RowsAsync("/intake/statement?list=accounts")).Where(a => a["pay, reckoned"].Length > 0).ToArray();
        Assert.NotEmpty(accounts);
        Assert.All(accounts, a => Assert.Equal(Number(a["pay, reckoned"]), Number(Assert.Single(lines[a["ticket"]], l => l["line"] == "pay")["value, reckoned"]), 2));
        Assert.All(lines.SelectMany(l => l), l => Assert.False(l["unit"] is "bu" || l["unit"].EndsWith("/bu", StringComparison.Ordinal), "a bushel is no mass: it is named as the trade's count"));
    }

    [Fact]
    public async Task TankerLayers_OfALoad_AddUpToAllUnderEachOutflow()
    {
        var all = await RowsAsync("/dispatch/load/layers?list=tanker-layers");
        Assert.NotEmpty(all);
        Assert.All(all.GroupBy(r => (r["loose load"], r["outflow"])), load => Assert.InRange(load.Sum(r => Number(r["share of the load by mass, reckoned [% = P1]"])), 99.9, 100.0001)); // parts below a millionth are left out
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
