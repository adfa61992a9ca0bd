using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>The pages as a newcomer meets them: the demonstration at its opening moment.</summary>
[Collection(BrowserCollection.Name)]
public sealed class DemonstrationTests(DemonstrationSite site, Chromium chromium)
{
    [ChromiumTheory]
    [InlineData("/", 1280, true)]
    [InlineData("/", 390, false)]
    [InlineData("/bins", 390, false)]
    [InlineData("/bins?outflow=core", 1920, true)]
    [InlineData("/bins/B14", 390, true)]
    [InlineData("/ledger?text=telephone", 390, false)]
    [InlineData("/season", 1280, false)]
    [InlineData("/mix?flour=WB", 1280, true)]
    [InlineData("/mix?flour=HG", 390, false)]
    [InlineData("/mix/sheets", 1280, false)]
    [InlineData("/mix/sheets", 390, true)]
    [InlineData("/mix/set?flour=WB", 390, false)]
    [InlineData("/mix/sheets/print?sheet=MXA%202026-01-13%2006:00", 1280, false)]
    [InlineData("/season/buying/print", 390, false)]
    [InlineData("/season", 390, true)]
    [InlineData("/season/buying", 390, false)]
    [InlineData("/season/terms", 390, true)]
    [InlineData("/season/promise", 1280, false)]
    [InlineData("/season/promise", 390, true)]
    [InlineData("/season/paper?demand:HG=430", 1280, true)]
    [InlineData("/season/lot?class=HS&tonnes=800&when=2026-04-01&protein=14&spread=0.3&moisture=12&asked=260", 390, false)]
    [InlineData("/season/bands?class=HW&most=2&step=0.5&bin=B01&bin=B02&bin=B03", 390, true)]
    [InlineData("/season/bands?class=HW&most=2&step=0.5&bin=B01&bin=B02&bin=B03", 1280, false)]
    [InlineData("/season/change-over?flour=WB", 390, false)]
    [InlineData("/season/change-over?flour=HG", 1280, true)]
    public async Task Page_OfTheDemonstration_IsAccessibleAndFits(string path, int width, bool dark)
    {
        var page = await chromium.VisitorAsync(await site.AddressAsync(), width, dark);
        await page.GotoAsync(path, new() { Timeout = 120_000 });
        await KeepAsync(page, $"{path.Trim('/').Replace('/', '-').Replace('?', '-')}-{width}-{(dark ? "dark" : "light")}");
        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, "The page is wider than the window.");
    }

    [ChromiumFact]
    public async Task Today_AtTheOpeningMoment_ShowsTheSuppliersCallAndTheMillAtWork()
    {
        // The scenario of the demonstration: on the morning of 14 January the supplier of ticket 25-0709-061 reports treated seed.
        var page = await chromium.VisitorAsync(await site.AddressAsync(), 1280, dark: false);
        await page.GotoAsync("/", new() { Timeout = 120_000 });
        await Assertions.Expect(page.GetByText("14 Jan 2026 10:40").First).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator("section", new() { HasText = "Needs a person" }).First).ToContainTextAsync("25-0709-061");
        await Assertions.Expect(page.Locator("section", new() { HasText = "Under way" }).First).ToContainTextAsync("UA");
    }

    [ChromiumFact]
    public async Task Bins_OfTheDemonstration_MakeThePictureOfTheReadme()
    {
        var page = await chromium.VisitorAsync(await site.AddressAsync(), 1280, dark: false);
        await page.GotoAsync("/bins", new() { Timeout = 120_000 });
        Assert.Equal(19, await page.Locator("section[aria-label='Wheat bins'] .bin-drawing").CountAsync());
        if (Environment.GetEnvironmentVariable("EVENGRIST_PICTURE") == "1")
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(Root(), "docs", "picture.png") });
        }
    }

    // Pictures to look at, where a folder for them is named.
    private static async Task KeepAsync(IPage page, string name)
    {
        if (Environment.GetEnvironmentVariable("EVENGRIST_PICTURES") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{(name.StartsWith('-') ? "today" + name : name)}.png"), FullPage = true });
        }
    }

    private static string Root()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Evengrist.slnx")))
        {
            folder = folder.Parent ?? throw new DirectoryNotFoundException("There is no Evengrist.slnx above the tests.");
        }

        return folder.FullName;
    }
}
