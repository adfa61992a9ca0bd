using System.Net;
using System.Text.RegularExpressions;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The arrival clock with the demonstration's year: 390 t before Unit A with 62.4 t of it stirred, 150 t and 20 t before Unit B.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class ClockOfTheYearTests(DemonstrationSite site)
{
    private const string Moment = "asof=2026-01-14T10:40";

    [Fact]
    public async Task Page_AtTheOpeningMoment_SaysWhereTheChangeIs()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, $"/milling/clock?{Moment}");
        Assert.Contains("390.0 t lay in TA at the change, 62.4 t of it stirred", page, StringComparison.Ordinal);
        Assert.Contains("Not tuned.", page, StringComparison.Ordinal);
        Assert.Contains("0 % is of the change at 14 Jan 2026 06:00", page, StringComparison.Ordinal);
        Assert.Contains("packer, F-WB first in first out", page, StringComparison.Ordinal);
        Assert.Contains("packer, F-WB stirred", page, StringComparison.Ordinal);
    }

    /// <summary>What lies in the temper bin is drawn from it first in first out: in the demonstration's hidden truth 150 t, nothing stirred. Readings find its hours, within their ±, against those the ledger alone supposes.</summary>
    [Fact]
    public async Task Page_TunedFromAChangeOfWheat_FindsTheHoursOfTheHiddenTruth()
    {
        using var client = site.Client();
        var page = await Tickets.TextAsync(client, "/milling/clock?unit=UB&tune=2025-11-19T12:00&asof=2025-11-21T20:00");
        var found = Regex.Match(page, @"dead time ([\d.]+) ± ([\d.]+) h");
        Assert.True(found.Success, page);
        double Of(int group) => double.Parse(found.Groups[group].Value, System.Globalization.CultureInfo.InvariantCulture);

        // 150 t at the flow of that day, 7.8 t/h, within the two hours of a stretch.
        Assert.InRange(150 / 7.8, Of(1) - Of(2) - 1, Of(1) + Of(2) + 1);
        Assert.Contains("Tuned by readings.", page, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("at=soon", "Changed at: a moment such as 2026-01-14T08:00 is needed; read “soon”.")]
    [InlineData("at=2026-02-01T08:00", "Changed at: it lies after the moment looked at")]
    [InlineData("unit=UZ", "Unit: choose one of UA, UB; read “UZ”.")]
    [InlineData("gate=-1", "Gate to temper bin: it lies from 0 to 1440 minutes; read -1.")]
    [InlineData("gate=", "Gate to temper bin: it is missing; give a number.")]
    [InlineData("what=Colour", "Tuned by: choose one of Protein, Ash, Moisture, WetGluten; read “Colour”.")]
    [InlineData("tune=2026-01-10T10:00", "The readings do not tell.")]
    public async Task Page_WhatCannotBe_IsSaid(string query, string says)
    {
        using var client = site.Client();
        Assert.Contains(says, WebUtility.HtmlDecode(await client.GetStringAsync(new Uri($"/milling/clock?{query}&{Moment}", UriKind.Relative))), StringComparison.Ordinal);
    }
}
