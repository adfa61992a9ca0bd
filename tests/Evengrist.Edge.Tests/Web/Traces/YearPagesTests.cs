using Evengrist.Edge.Tests.Web.Browser;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The pages at their fullest: a day of 112 trucks, a recall, the roots of a pallet.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class YearPagesTests(DemonstrationSite site, Chromium chromium)
{
    [ChromiumTheory]
    [InlineData("/intake?day=2025-07-09")]
    [InlineData("/intake/25-0709-061")]
    [InlineData("/intake/25-0709-061/print")]
    [InlineData("/intake/new")]
    [InlineData("/tracing?code=25-0709-061")]
    [InlineData("/tracing?code=P-WB-250917-0100")]
    [InlineData("/tracing/hold?code=25-0709-061")]
    [InlineData("/tracing/print?code=25-0709-061")]
    public async Task Page_OfTheYear_IsAccessibleAndFits(string path)
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        await visitor.FindsNoFaultAsync(path);
    }
}
