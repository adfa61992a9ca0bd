using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>The flow sheet in a browser: its pages in every look, and the drawing.</summary>
[Collection(YearBrowserCollection.Name)]
public sealed class FlowSheetTests(WebSite tiny, DemonstrationSite site, Chromium chromium)
{
    [ChromiumTheory]
    [InlineData("/milling")]
    [InlineData("/milling/sheet?unit=Z")]
    [InlineData("/milling/sheet/passage?unit=Z&code=B1")]
    [InlineData("/milling/trial")]
    [InlineData("/milling/tests")]
    [InlineData("/milling/suggest")]
    [InlineData("/milling/drift")]
    public async Task Page_OfAMillWithoutASheet_IsAccessibleAndFits(string path)
    {
        await using var visitor = await chromium.VisitorAsync(tiny.Address, 1280, dark: false);
        await visitor.FindsNoFaultAsync(path);
    }

    [ChromiumTheory]
    [InlineData("/milling")]
    [InlineData("/milling/sheet?unit=UA")]
    [InlineData("/milling/sheet/passage?unit=UA&code=B1")]
    [InlineData("/milling/sheet/print?unit=UB")]
    [InlineData("/milling/tests?unit=UA")]
    [InlineData("/milling/drift?unit=UB")]
    [InlineData("/milling/drift?unit=UA&flour=430&feed=200")]
    [InlineData("/milling/tests/test?code=UA-2026-01-12T0900")]
    [InlineData("/milling/trial?unit=UA&survey=no")]
    [InlineData("/milling/trial?unit=UA&gap-B3C=210&flour=430&feed=200&patent=1M%202M&cloths=B1%201120%201000")]
    [InlineData("/milling/trial?unit=UA&survey=no&gap-B3C=210&flour=430&feed=200&patent=1M%202M&draws=400")]
    [InlineData("/milling/trial?unit=UB&gap-B2=-5&releases=B1")]
    [InlineData("/milling/trials?unit=UA")]
    [InlineData("/milling/suggest?unit=UA&survey=no")]
    [InlineData("/milling/suggest?unit=UA&survey=no&what=Yield&of=together&way=up&by=0.3&patent=1M%202M%201MF&keep-ash-rise=0&flour=430&feed=200")]
    [InlineData("/milling/suggest?unit=UB&what=Ash&by=-1&keep-ash-fall=x")]
    public async Task Page_OfTheDemonstration_IsAccessibleAndFits(string path)
    {
        await using var visitor = await chromium.VisitorAsync(await site.AddressAsync(), 1280, dark: false);
        await visitor.FindsNoFaultAsync(path);
    }

    [ChromiumFact]
    public async Task FlowSheet_OfUnitA_IsDrawnWholeAndShowsWhereAPassageLeads()
    {
        await using var visitor = await chromium.VisitorAsync(await site.AddressAsync(), 1280, dark: false);
        var page = visitor.Page;
        await visitor.OpenAsync("/milling/sheet?unit=UA");
        await Assertions.Expect(page.Locator("#flow .flow-box")).ToHaveCountAsync(31 + 21);
        Assert.Equal(await page.EvaluateAsync<int>("JSON.parse(document.getElementById('flow-data').textContent).edges.length"), await page.Locator("#flow .flow-way .flow-line").CountAsync());
        await page.Locator("#flow a.flow-box[data-code='G2']").FocusAsync();
        Assert.Equal(["1B", "2B", "B1", "B2", "G2", "M1F", "P4"], await page.EvaluateAsync<string[]>("[...document.querySelectorAll('#flow .flow-box.lit')].map(b => b.dataset.code).sort()"));
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.GetByRole(AriaRole.Heading, new() { Name = "G2 of unit UA" })).ToBeVisibleAsync();
    }

    [ChromiumFact]
    public async Task WithoutScript_TheTableSaysTheSame()
    {
        await using var visitor = await chromium.VisitorAsync(await site.AddressAsync(), 390, dark: true, script: false);
        await visitor.OpenAsync("/milling/sheet?unit=UA");
        await Assertions.Expect(visitor.Page.GetByText("the table below says the same without it")).ToBeVisibleAsync();
        await Assertions.Expect(visitor.Page.Locator("#passage-B1").Locator("xpath=..")).ToContainTextAsync("overs of 1120 µm to B2");
    }

    [ChromiumFact]
    public async Task OnPaper_BoxesAndTheWaysBetweenThemAreSeen()
    {
        await using var visitor = await chromium.VisitorAsync(await site.AddressAsync(), 1280, dark: true);
        await visitor.OpenAsync("/milling/sheet/print?unit=UB");
        await visitor.Page.EmulateMediaAsync(new() { Media = Media.Print });
        await Assertions.Expect(visitor.Page.Locator("#flow .flow-way .flow-line").First).ToBeVisibleAsync();
        await Assertions.Expect(visitor.Page.Locator("#flow .flow-way .flow-head").First).ToBeVisibleAsync();
        await Assertions.Expect(visitor.Page.Locator("#flow .flow-box[data-code='B1']")).ToBeVisibleAsync();
        await Assertions.Expect(visitor.Page.GetByText("Roll nips draw in")).ToBeVisibleAsync();
    }
}
