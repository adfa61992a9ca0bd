using Deque.AxeCore.Playwright;
using Evengrist.Edge.Tests.Web.Browser;

namespace Evengrist.Edge.Tests.Web.Traces;

/// <summary>The pages at their fullest: a day of 112 trucks, a recall, the roots of a pallet.</summary>
[Collection(DemonstrationSiteCollection.Name)]
public sealed class YearPagesTests(DemonstrationSite site, Chromium chromium)
{
    [ChromiumTheory]
    [InlineData("/intake?day=2025-07-09", 1280, false)]
    [InlineData("/intake?day=2025-07-09", 390, true)]
    [InlineData("/intake/25-0709-061", 1280, true)]
    [InlineData("/intake/25-0709-061/print", 1280, false)]
    [InlineData("/intake/new", 1920, false)]
    [InlineData("/tracing?code=25-0709-061", 1280, false)]
    [InlineData("/tracing?code=25-0709-061", 390, true)]
    [InlineData("/tracing?code=P-WB-250917-0100", 1920, true)]
    [InlineData("/tracing/hold?code=25-0709-061", 1280, false)]
    [InlineData("/tracing/print?code=25-0709-061", 1280, false)]
    public async Task Page_OfTheYear_IsAccessibleAndFits(string path, int width, bool dark)
    {
        var page = await chromium.VisitorAsync(site.Address, width, dark);
        await page.GotoAsync(path);
        if (Environment.GetEnvironmentVariable("EVENGRIST_SHOTS") is { Length: > 0 } shots)
        {
            await page.ScreenshotAsync(new() { FullPage = true, Path = Path.Combine(shots, $"year-{path.Trim('/').Replace('/', '_').Replace('?', '_')}-{width}.png") });
        }

        var faults = (await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}");
        Assert.True(!faults.Any(), string.Join("\n", faults));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, "The page is wider than the window.");
    }
}
