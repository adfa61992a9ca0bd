using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web;

/// <summary>The balance of a small mill's day, to be reckoned by hand: 20 t of wheat, 0.8 t of water, 15 t milled to 11 t of flour and 4 t of bran, 5.8 t more in the temper bin.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class MillBalancePageTests(WebSite site)
{
    private const string Day = "/ledger/balance/mill?day=2025-09-15&asof=2025-09-20T08:00";

    [Theory]
    [InlineData("", "wheat to first break 73.33 ± ")]
    [InlineData("", "wheat before cleaning 55.00 ± ")]
    [InlineData("", "0.0 % evaporation + unweighed")]
    [InlineData("", "Less is missing than is usual: below the band of 0.5 to 2.0 %")]
    [InlineData("", "The temper bins held 5.8 t more at the end.")]
    [InlineData("", "F-WB, flour 11.0 ± ")]
    [InlineData("", "Y-BR, by-product 4.0 ± ")]
    [InlineData("", "12.0 ± 0.20")] // Moisture of the wheat, from the truck it came on.
    [InlineData("&kwh=1100", "100.0 kWh/t of flour, 55.0 kWh/t of wheat before cleaning")]
    [InlineData("&by=F-WB", "F-WB, by-product")]
    [InlineData("&over=month", "from 1 Sep 2025 06:00 to 20 Sep 2025 08:00, as far as it has come")]
    [InlineData("&section=UA", "wheat to first break 73.33 ± ")]
    public async Task Page_OfADay_Shows(string more, string shows)
    {
        using var client = site.Client();
        Assert.Contains(shows, await Tickets.TextAsync(client, Day + more), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("day=soon", "Milling day: a day such as")]
    [InlineData("day=2020-01-01", "No wheat went to the mill: there is nothing to balance. Choose another span.")]
    [InlineData("day=9999-12-31", "Milling day")]
    [InlineData("over=year", "Over: choose day or month; read “year”.")]
    [InlineData("section=UZ", "Section: choose all or one of UA; read “UZ”.")]
    [InlineData("u-wheat=-1", "± of the wheat scales: it lies from 0 to 50; read -1.")]
    [InlineData("u-flour=", "± of the flour scales: it is missing; give a number.")]
    [InlineData("wheat=damp", "Moisture of the wheat: a number such as 12.5 is needed; read “damp”.")]
    [InlineData("wheat=120", "Moisture of the wheat: it lies from 0 up to 100 %")]
    [InlineData("weighed=-4", "Wheat before first break: it lies from 0")]
    [InlineData("kwh=-4", "Electricity: it lies from 0")]
    [InlineData("by=F-XX", "By-products: nothing went to “F-XX” in this span.")]
    public async Task Page_WhatCannotBe_IsSaidAndWhatWasTypedStays(string query, string says)
    {
        using var client = site.Client();
        var address = query.StartsWith("day", StringComparison.Ordinal) ? $"/ledger/balance/mill?{query}&asof=2025-09-20T08:00" : $"{Day}&{query}";
        var page = WebUtility.HtmlDecode(await client.GetStringAsync(new Uri(address, UriKind.Relative)));
        Assert.Contains(says, page, StringComparison.Ordinal);
        var (key, typed) = (query.Split('=')[0], query.Split('=')[1]);
        Assert.True(key is "over" or "section" || page.Contains($"name=\"{key}\"", StringComparison.Ordinal) && page.Contains($"value=\"{typed}\"", StringComparison.Ordinal));
    }

    [Fact]
    public async Task Print_OfADay_IsOnPaperWithPlacesToSign()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, Day.Replace("mill?", "mill/print?", StringComparison.Ordinal));
        Assert.Contains("weighers checked, name and time", page, StringComparison.Ordinal);
        Assert.Contains("tuned to no mill", page, StringComparison.Ordinal);
    }
}
