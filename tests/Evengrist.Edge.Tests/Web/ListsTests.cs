using System.Globalization;
using System.Net;
using System.Reflection;
using System.Text;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Plant.Exports;
using Evengrist.Records.Lists;
using Evengrist.Web.Sights.Lists;
using ExcelDataReader;
using Microsoft.AspNetCore.Components;
using Parquet;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Every list of the program comes out in every form, and every list stands on a page.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class ListsTests(WebSite site)
{
    public static TheoryData<string> Names => [.. MillLists.All.Select(l => l.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public async Task Take_EveryList_ComesInThreeFormsWithTheSameRows(string name)
    {
        Assert.Matches("^[a-z]+(-[a-z]+)*$", name);
        using var client = site.Client();
        var rows = new List<long>();
        foreach (var format in ListFormat.All)
        {
            using var answer = await client.GetAsync(new Uri($"/api/lists/{name}?as={format.Word}&asof=2025-09-20T00:00", UriKind.Relative));
            Assert.True(answer.StatusCode == HttpStatusCode.OK, $"{name} as {format.Word}: {await answer.Content.ReadAsStringAsync()}");
            Assert.Equal(($"{name}.{format.Word}", format.Media), (answer.Content.Headers.ContentDisposition?.FileName, answer.Content.Headers.ContentType?.ToString()));
            rows.Add(await CountAsync(await answer.Content.ReadAsByteArrayAsync(), format));
        }

        Assert.All(rows, count => Assert.Equal(rows[0], count));
    }

    [Fact]
    public void Lists_All_StandOnAPage() => Assert.Equal([], MillLists.All.Select(l => l.Name).Except(PageLists.All.Select(p => p.Name)));

    [Fact]
    public void PageLists_All_StandOnPagesThatAreThere()
    {
        var routes = typeof(PageLists).Assembly.GetTypes().SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => Regex.Replace(r.Template, @"\{[^}]*\}", "{Code}")).ToHashSet();
        Assert.Equal([], PageLists.All.Select(p => p.Page).Where(p => !routes.Contains(p)).Distinct());
        Assert.Equal(PageLists.All.Count, PageLists.All.DistinctBy(p => (p.Page, p.Name)).Count());
    }

    [Fact]
    public async Task Page_WithAs_IsItsListNarrowedAsThePageIs()
    {
        using var client = site.Client();
        var csv = await client.GetStringAsync(new Uri("/ledger?place=P-0001&sort=movement&as=csv", UriKind.Relative));
        Assert.Equal(3, csv.Split("\r\n", StringSplitOptions.RemoveEmptyEntries).Length); // heading, filled, gone
        var movements = await client.GetStringAsync(new Uri("/bins/b01?as=csv&list=movements", UriKind.Relative));
        Assert.Contains("B01,bin", movements, StringComparison.Ordinal);
        Assert.Contains(",26340,", movements, StringComparison.Ordinal); // 26.34 t off a truck, in kilograms
        Assert.Contains("mass as it lay, seen [kg = KGM]", movements, StringComparison.Ordinal);
        Assert.DoesNotContain(",B02,", movements, StringComparison.Ordinal);
        var layers = await client.GetStringAsync(new Uri("/bins?as=csv&list=layers&outflow=stirred&asof=2025-09-20T00:00", UriKind.Relative));
        Assert.Contains("stirred", layers, StringComparison.Ordinal);
        var stock = Regex.Matches(layers, "\nB01,[^\n]*?stirred,([0-9.]+),").Sum(m => decimal.Parse(m.Groups[1].Value, CultureInfo.InvariantCulture));
        Assert.Equal(31440m, stock); // 26,340 + 25,100 − 20,000 kg
    }

    [Theory]
    [InlineData("/ledger?as=docx", "csv, xlsx or parquet")]
    [InlineData("/ledger?as=csv&list=cows", "no list \"cows\"")]
    [InlineData("/ledger?as=csv&from=yesterday", "\"yesterday\" is no day")]
    [InlineData("/api/lists/movements?as=pdf", "csv, xlsx or parquet")]
    [InlineData("/api/lists/movements?until=31-12-2025", "is no day")]
    [InlineData("/api/lists/cows", "/api/lists names them all")]
    [InlineData("/api/lists/arrivals", "take it at /milling/clock")]
    [InlineData("/api/lists/movements?from=2026-01-10&until=2026-01-01", "ends before it begins")]
    [InlineData("/ledger?as=csv&from=2026-01-10T08:00&until=2026-01-10T08:00", "ends before it begins")]
    [InlineData("/laboratory/plans/toxins?as=csv&toxin=ota", "No published variance")]
    [InlineData("/laboratory/plans?as=csv&lot=1", "2 units or more")]
    [InlineData("/intake/NONE/advice?as=csv", "no ticket \"NONE\"")]
    public async Task Asked_Wrongly_SaysWhat(string address, string words)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(address, UriKind.Relative));
        Assert.True(answer.StatusCode is HttpStatusCode.BadRequest or HttpStatusCode.NotFound);
        var said = await answer.Content.ReadAsStringAsync();
        Assert.Contains(words, answer.Content.Headers.ContentType?.MediaType == "application/problem+json" ? JsonDocument.Parse(said).RootElement.GetProperty("detail").GetString()! : said, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Lists_OfApi_NameEveryOneWithItsPages()
    {
        using var client = site.Client();
        using var all = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/lists", UriKind.Relative)));
        var lists = all.RootElement.EnumerateArray().ToDictionary(l => l.GetProperty("name").GetString()!);
        Assert.Equal(MillLists.All.Select(l => l.Name).Concat(PageLists.All.Select(p => p.Name)).Distinct().Order(StringComparer.Ordinal), lists.Keys);
        Assert.All(lists.Values, l => Assert.NotEqual(0, l.GetProperty("pages").GetArrayLength()));
        Assert.Equal((true, false), (lists["movements"].GetProperty("ofMill").GetBoolean(), lists["arrivals"].GetProperty("ofMill").GetBoolean()));
    }

    [Fact]
    public async Task Mills_SentWithTheForm_ComeOutAsTheyAreTypedAndAreKeptNowhere()
    {
        using var client = site.Client();
        Assert.Contains("Nothing is compared yet", await (await client.GetAsync(new Uri("/laboratory/mills?as=csv", UriKind.Relative))).Content.ReadAsStringAsync(), StringComparison.Ordinal);
        async Task<string> Sent(string mills, string list = "mills-compared")
        {
            using var form = new FormUrlEncodedContent(new Dictionary<string, string> { ["Mills.What"] = "protein", ["Mills.Lower"] = "11.7", ["Mills.Upper"] = "12.1", ["Mills.Mills"] = mills });
            using var answer = await client.PostAsync(new Uri($"/laboratory/mills?as=csv&list={list}", UriKind.Relative), form);
            return await answer.Content.ReadAsStringAsync();
        }

        var example = await client.GetStringAsync(new Uri("/laboratory/mills?example=true&as=csv&list=ring-laboratories", UriKind.Relative));
        Assert.Contains("brand", example, StringComparison.Ordinal);
        var lines = (await Sent(Evengrist.Plant.Cases.MillsTables.MillsExample)).Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(4, lines.Length); // a heading and three mills
        Assert.All(lines[1..], l => Assert.StartsWith("protein,", l, StringComparison.Ordinal));
        Assert.Contains("There are no mills", await Sent(""), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/intake/arrive", false)] // an address of its own, no ticket called so
    [InlineData("/packing/orders/new", false)]
    [InlineData("/intake/T-1", true)]
    [InlineData("/packing/orders/P-1", true)]
    public void Address_OfAFormForANewOne_HasNoListOfAThing(string path, bool has) => Assert.Equal(has, PageLists.On(path).Count > 0);

    [Fact]
    public async Task Page_WithLists_ShowsWhereTheyAreTakenOut()
    {
        using var client = site.Client();
        var html = await client.GetStringAsync(new Uri("/ledger?place=B01", UriKind.Relative));
        Assert.Contains("""href="/ledger?place=B01&amp;as=parquet&amp;list=movements" """.TrimEnd(), html, StringComparison.Ordinal);
        Assert.DoesNotContain("Take lists out", await client.GetStringAsync(new Uri("/who", UriKind.Relative)), StringComparison.Ordinal);
    }

    private static async Task<long> CountAsync(byte[] file, ListFormat format)
    {
        if (format == ListFormat.Csv)
        {
            using var reader = new StreamReader(new MemoryStream(file));
            long rows = -1;
            var quoted = false;
            for (int c; (c = reader.Read()) >= 0;)
            {
                quoted ^= c == '"';
                rows += c == '\n' && !quoted ? 1 : 0;
            }

            return rows;
        }

        if (format == ListFormat.Parquet)
        {
            await using var parquet = await ParquetReader.CreateAsync(new MemoryStream(file));
            return Enumerable.Range(0, parquet.RowGroupCount).Sum(i => parquet.OpenRowGroupReader(i).RowCount);
        }

        Encoding.RegisterProvider(CodePagesEncodingProvider.Instance);
        using var book = ExcelReaderFactory.CreateOpenXmlReader(new MemoryStream(file));
        long count = -1;
        while (book.Read())
        {
            count++;
        }

        return count;
    }
}
