using System.Text.RegularExpressions;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

[Collection(BrowserCollection.Name)]
public sealed class FaceTests(WebSite site, Chromium chromium)
{
    private static readonly string[] Paths = ["/", "/bins", "/bins/B01", "/bins/B02?outflow=core", "/ledger", "/ledger?place=B01", "/ledger/balance?kind=Bin", "/bins/storage", "/bins/storage/constants", "/who", "/import", "/intake/arrive", "/intake/bookings", "/intake/yard", "/intake/yard/wall", "/season", "/season/terms", "/season/paper", "/season/buying", "/season/kept", "/season/promise", "/season/truck", "/season/lot", "/season/bands", "/season/bands/print", "/season/change-over", "/season/change-over/print", "/season/buying/print", "/mix", "/mix/set", "/mix/sheets", "/mix/sheets/print", "/nowhere"];

    public static TheoryData<string, int, bool> Pages
    {
        get
        {
            var pages = new TheoryData<string, int, bool>();
            foreach (var path in Paths)
            {
                pages.Add(path, 1280, false);
                pages.Add(path, 390, true);
            }

            return pages;
        }
    }

    [ChromiumTheory]
    [MemberData(nameof(Pages))]
    public async Task Page_WideAndNarrowLightAndDark_IsAccessibleFitsAndBreaksNoPolicy(string path, int width, bool dark)
    {
        var page = await chromium.VisitorAsync(site.Address, width, dark);
        List<string> complaints = [];
        page.Console += (_, message) => complaints.AddRange(message.Type == "error" && !message.Text.Contains("404", StringComparison.Ordinal) ? [message.Text] : []);
        page.PageError += (_, error) => complaints.Add(error);
        await page.GotoAsync(path);

        var faults = (await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Select(n => n.Html))}");
        Assert.Empty(faults);
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, "The page is wider than the window.");
        Assert.Empty(complaints);
    }

    [ChromiumFact]
    public async Task Keyboard_FromTheTop_SkipsToTheContentAndOpensAFigure()
    {
        var page = await chromium.VisitorAsync(site.Address, 1280, dark: false);
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
        var page = await chromium.VisitorAsync(site.Address, 1280, dark: false);
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
        var page = await chromium.VisitorAsync(site.Address, 1280, dark: false);
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
        var page = await chromium.VisitorAsync(site.Address, 390, dark: false, script: false);
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
        var page = await chromium.VisitorAsync(site.Address, 1280, dark: true);
        await page.GotoAsync("/");
        await page.GetByRole(AriaRole.Button, new() { Name = "Look: auto" }).ClickAsync();
        await Assertions.Expect(page.Locator("html")).ToHaveCSSAsync("color-scheme", "light");
    }
}
