using System.Net;
using System.Text.Json;
using System.Text.RegularExpressions;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Edge.Tests.Web;

[Collection(WebSiteCollection.Name)]
public sealed class LedgerTests(WebSite site)
{
    [Fact]
    public async Task PutRight_AReading_NamesTheFirstAndBothStay()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        var wrong = site.Mill.Ask(view => view.Book.ReadingsOn(view.Book.Named("25-0709-003").Id).Single(r => r.What == Property.Protein && view.Book.Counts(r)));
        var page = $"/ledger/{wrong.Id.Value}";
        var at = Regex.Match(await client.GetStringAsync(new Uri(page, UriKind.Relative)), "name=\"Right.At\"[^>]* value=\"([^\"]+)\"").Groups[1].Value;
        using var answer = await WebSite.PostAsync(client, page, page,
            [new("_handler", "right"), new("Right.Key", "right-once"), new("Right.To", "25-0709-003"), new("Right.Value", "11.4"), new("Right.At", at), new("Right.Reason", "Read off wrongly.")]);

        Assert.Equal(HttpStatusCode.Redirect, answer.StatusCode);
        var later = await client.GetStringAsync(answer.Headers.Location);
        Assert.Contains("Read off wrongly.", later, StringComparison.Ordinal);
        Assert.Contains("11.2 % 12mb", later, StringComparison.Ordinal);
        Assert.Contains("11.4 % 12mb", later, StringComparison.Ordinal);
        var now = site.Mill.Ask(view => view.Book.ReadingsOn(view.Book.Named("25-0709-003").Id).Single(r => r.What == Property.Protein));
        Assert.Equal((11.4m, wrong.At), (now.Value, now.At));
    }

    [Fact]
    public async Task PutRight_AMovementThatWouldOverdraw_IsRefusedWithPlaceTimeAndMass()
    {
        using var client = site.Client();
        using var named = await WebSite.PostAsync(client, "/who", "/choose", [new("name", "Ada Miller")]);
        var draw = site.Mill.Ask(view => view.Book.Movements.Single(m => view.Book[m.From].Code == "B01"));
        var page = $"/ledger/{draw.Id.Value}";
        using var answer = await WebSite.PostAsync(client, page, page,
            [new("_handler", "right"), new("Right.Key", "too-much"), new("Right.From", "B01"), new("Right.To", "MXA"), new("Right.MassKilograms", "60000"), new("Right.At", "2025-09-15T06:00"), new("Right.Until", "2025-09-15T10:00"), new("Right.Reason", "Try.")]);
        var said = WebUtility.HtmlDecode(await answer.Content.ReadAsStringAsync());
        Assert.Contains("Not recorded.", said, StringComparison.Ordinal);
        Assert.Contains("B01 would stand 8,560 kg below zero", said, StringComparison.Ordinal);
        Assert.Equal(Mass.FromTonnes(20m), site.Mill.Ask(view => view.Book.Movements[view.Book.IndexOf(draw.Id)].Mass));
    }

    [Fact]
    public async Task Balance_OverTheApi_SumsToZero()
    {
        using var client = site.Client();
        using var json = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/ledger/balance?asof=2025-09-15T08:00", UriKind.Relative)));
        Assert.Equal(0, json.RootElement.GetProperty("sumOfStocksGrams").GetInt64());
        Assert.True(json.RootElement.GetProperty("addsUp").GetBoolean());
    }

    [Fact]
    public async Task Facts_OverTheApi_ComePageByPageNewestFirst()
    {
        using var client = site.Client();
        using var first = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/ledger/facts?size=5", UriKind.Relative)));
        var numbers = first.RootElement.GetProperty("facts").EnumerateArray().Select(f => f.GetProperty("number").GetInt64()).ToArray();
        Assert.Equal(numbers.OrderDescending(), numbers);
        var next = first.RootElement.GetProperty("next").GetInt64();
        using var second = JsonDocument.Parse(await client.GetStringAsync(new Uri($"/api/ledger/facts?size=5&before={next}", UriKind.Relative)));
        Assert.All(second.RootElement.GetProperty("facts").EnumerateArray(), f => Assert.True(f.GetProperty("number").GetInt64() < numbers[^1]));
    }

    [Theory]
    [InlineData("/api/bins?asof=yesterday", HttpStatusCode.BadRequest)]
    [InlineData("/api/bins/B01/content?outflow=sideways", HttpStatusCode.BadRequest)]
    [InlineData("/api/bins/B99/content", HttpStatusCode.NotFound)]
    [InlineData("/api/ledger/facts?sort=rumour", HttpStatusCode.BadRequest)]
    [InlineData("/api/ledger/facts?size=many", HttpStatusCode.BadRequest)]
    public async Task Api_BadQuestion_IsAProblemThatSaysWhatToDo(string path, HttpStatusCode status)
    {
        using var client = site.Client();
        using var answer = await client.GetAsync(new Uri(path, UriKind.Relative));
        Assert.Equal(status, answer.StatusCode);
        Assert.Equal("application/problem+json", answer.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task Content_OverTheApi_LayersSumToTheStockAndProteinIsTheDryMean()
    {
        // Before the draw B01 holds 26.34 t at 12.4 % and 25.10 t at 10.9 % (12mb, both at 12 % moisture): (26.34·12.4 + 25.10·10.9) / 51.44 = 11.668 %.
        using var client = site.Client();
        using var json = JsonDocument.Parse(await client.GetStringAsync(new Uri("/api/bins/B01/content?asof=2025-09-15T05:00", UriKind.Relative)));
        var layers = json.RootElement.GetProperty("layersBottomFirst").EnumerateArray().ToArray();
        Assert.Equal(51_440_000, layers.Sum(l => l.GetProperty("grams").GetInt64()));
        Assert.Equal("25-0709-001", layers[0].GetProperty("loads")[0].GetString());
        Assert.Equal(11.668, json.RootElement.GetProperty("protein").GetProperty("percentAt12mb").GetDouble(), 3);
    }
}
