using System.Text.RegularExpressions;
using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

[Collection(BrowserCollection.Name)]
public sealed class FaceTests(WebSite site, Chromium chromium)
{
    private static readonly string[] Paths = ["/", "/bins", "/bins/B01", "/bins/B02?outflow=core", "/ledger", "/ledger?place=B01", "/ledger/balance?kind=Bin", "/ledger/balance/mill?day=2025-09-15", "/milling/clock", "/ledger/balance/mill/print?day=2025-09-15", "/bins/storage", "/bins/storage/constants", "/who", "/import", "/intake/arrive", "/intake/bookings", "/intake/yard", "/intake/yard/wall", "/season", "/season/terms", "/season/paper", "/season/buying", "/season/kept", "/season/promise", "/season/truck", "/season/lot", "/season/bands", "/season/bands/print", "/season/change-over", "/season/change-over/print", "/season/buying/print", "/streams", "/streams?survey=1M,10,0.4,11,patent%0A2M,5,0.9,13,clear&cut=0.5", "/streams/print?survey=1M,10,0.4,11,patent%0A2M,5,0.9,13,clear", "/streams/survey", "/streams/survey/check", "/streams/additions", "/streams/additions?flow=0&m-wanted=250&g-base=13&g-wanted=12&g-gluten=77&r-into=WB&r-of=AP&r-percent=8", "/streams/additions/tables", "/streams/divide", "/streams/divide?survey=1M,10,0.4,11,patent%0A2M,5,0.9,13,clear&f0-code=patent&f0-price=400&f0-ash-most=0.5", "/streams/divide?survey=1M,10,0.4,11%0A2M,5,0.9,13&f0-code=patent&f0-price=400&f0-ash-most=0.5", "/streams/divide?survey=1M,10,0.4,11,patent&f0-code=patent&f0-price=400&f0-ash-most=0.3&f0-yield-least=5", "/streams/divide/print?survey=1M,10,0.4,11,patent%0A2M,5,0.9,13,clear&f0-code=patent&f0-price=400", "/mix", "/mix/set", "/mix/sheets", "/mix/sheets/print", "/mix/relations", "/tempering", "/tempering/wall", "/tempering/bins/TA", "/tempering/water", "/tempering/aims", "/laboratory", "/laboratory/file", "/laboratory/bake", "/laboratory/bake/blend?parts=WB;75;61.5%0AHG;25;63", "/laboratory/plan", "/laboratory/methods", "/laboratory/instruments", "/laboratory/calibration", "/laboratory/mills?example=true", "/laboratory/plans", "/laboratory/plans?good=x", "/laboratory/plans/toxins", "/laboratory/lots?day=2025-09-15", "/laboratory/lots/WB-250915", "/laboratory/specifications", "/laboratory/specifications/new", "/laboratory/legal-rules", "/laboratory/release-rules", "/laboratory/rejudge", "/laboratory/certificates", "/packing/products", "/packing/products/new", "/packing/content", "/packing/content?law=US&drift=x", "/packing/content/file", "/packing/content/inspection", "/packing/content/inspections", "/packing/labels", "/packing/labels?pallet=P-0001,P-9", "/packing/codes", "/packing/codes?text=(00)1", "/tracing/structure", "/dispatch", "/dispatch/load?n=D-0", "/dispatch/records", "/dispatch/consignees", "/dispatch/rules", "/packing/rework", "/packing/rework/rules", "/ledger/events", "/packing", "/packing/orders", "/packing/orders/new", "/packing/lines", "/packing/lines/book", "/packing/lines/campaigns", "/nowhere"];

    public static TheoryData<string> Pages => [.. Paths];

    [ChromiumTheory]
    [MemberData(nameof(Pages))]
    public async Task Page_InEveryLook_IsAccessibleFitsAndBreaksNoPolicy(string path)
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        await visitor.FindsNoFaultAsync(path);
    }

    [ChromiumFact]
    public async Task Keyboard_FromTheTop_SkipsToTheContentAndOpensAFigure()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        var page = visitor.Page;
        await page.GotoAsync("/bins/B01");
        await page.Keyboard.PressAsync("Tab");
        Assert.Equal("To the content", await page.EvaluateAsync<string>("document.activeElement.textContent"));
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal("content", await page.EvaluateAsync<string>("document.activeElement.id"));

        for (var presses = 0; presses < 12 && !await page.EvaluateAsync<bool>("document.activeElement.parentElement?.matches('details.fig') ?? false"); presses++)
        {
            await page.Keyboard.PressAsync("Tab");
        }

        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("details.fig[open] .because").First).ToContainTextAsync("In − out");
    }

    [ChromiumFact]
    public async Task Outflow_Chosen_ChangesTheBoardInPlaceAndTheAddress()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        var page = visitor.Page;
        await page.GotoAsync("/bins");
        await page.EvaluateAsync("window.stayed = true");
        await page.GetByRole(AriaRole.Link, new() { Name = "stirred", Exact = true }).ClickAsync();
        await Assertions.Expect(page.GetByText("the mean of all that lies in the bin")).ToBeVisibleAsync();
        Assert.True(await page.EvaluateAsync<bool>("window.stayed === true"));
        await Assertions.Expect(page).ToHaveURLAsync(new Regex(@"/bins\?outflow=stirred$"));
    }

    [ChromiumFact]
    public async Task Filter_OfTheLedger_ChangesTheFactsInPlaceAndTheAddress()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        var page = visitor.Page;
        await page.GotoAsync("/ledger");
        await page.EvaluateAsync("window.stayed = true");
        await page.GetByLabel("Words in it").FillAsync("indicator");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#facts tbody tr")).ToHaveCountAsync(1);
        Assert.True(await page.EvaluateAsync<bool>("window.stayed === true"));
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("text=indicator"));
    }

    [ChromiumFact]
    public async Task WithoutScript_AHold_IsPutAndShown()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 390, dark: false, script: false);
        var page = visitor.Page;
        await page.GotoAsync("/who?back=/bins/Y-BR");
        await page.GetByLabel("Your name").FillAsync("Ada Miller");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this name" }).ClickAsync();
        await page.GetByLabel("What", new() { Exact = true }).SelectOptionAsync("hold");
        await page.GetByLabel("Why, in your words").FillAsync("Sieve torn.");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record as Ada Miller" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Recorded.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".state.hold").First).ToContainTextAsync("HOLD");
    }

    [ChromiumFact]
    public async Task Look_Switched_HoldsAgainstTheSystem()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: true);
        var page = visitor.Page;
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look: auto" }).ClickAsync();
        await Assertions.Expect(page.Locator("html")).ToHaveCSSAsync("color-scheme", "light");
    }
}
