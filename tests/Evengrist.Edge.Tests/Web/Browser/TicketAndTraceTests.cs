using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Web.Sights.Trucks;
using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

[Collection(BrowserCollection.Name)]
public sealed class TicketAndTraceTests(WebSite site, Chromium chromium)
{
    private static readonly string[] Paths =
    [
        "/intake", "/intake?day=2025-07-17", "/intake/new", "/intake/25-0709-001", "/intake/25-0709-001/advice", "/intake/limits", "/intake/25-0709-001/print", "/intake/grades", "/intake/grades?class=HRW&f-TestWeight=59.9&f-Damaged=1.2&none=1",
        "/intake/grades?standard=codex-wheat", "/intake/grades/house", "/tracing", "/tracing?code=25-0709-001", "/tracing?code=P-0001",
        "/tracing?code=ZZZ", "/tracing/hold?code=25-0709-001", "/tracing/print?code=25-0709-001", "/tracing/recall", "/tracing/recall?what=25-0709-001", "/tracing/recall?what=ZZZ", "/tracing/recall/issue?what=25-0709-001", "/tracing/recalls", "/tracing/drill",
    ];

    public static TheoryData<string> Pages => [.. Paths];

    [ChromiumTheory]
    [MemberData(nameof(Pages))]
    public async Task Page_InEveryLook_IsAccessibleFitsAndBreaksNoPolicy(string path)
    {
        ExampleContract.KeepWhereNoneIs(site.Mill);
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        await visitor.FindsNoFaultAsync(path);
    }

    // The worked ticket of the acceptance list; see NewTicketTests.
    [ChromiumFact]
    public async Task NewTicket_TypedByKeyboard_ReckonsAsOneTypes()
    {
        ExampleContract.KeepWhereNoneIs(site.Mill);
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        var page = visitor.Page;
        await page.GotoAsync("/intake/new");
        await page.GetByLabel("Gross, kg").FillAsync("38460");
        await page.GetByLabel("Tare, kg").FillAsync("12120");
        await page.GetByLabel("Moisture, %", new() { Exact = true }).FillAsync("14.2");
        await page.GetByLabel("Dockage, %").FillAsync("1.2");
        await page.GetByLabel("Protein, %", new() { Exact = true }).FillAsync("13.1");
        await Assertions.Expect(page.Locator("#reckoned")).ToContainTextAsync("has no moisture basis");
        await page.GetByRole(AriaRole.Radiogroup, new() { Name = "Protein is on the basis" }).GetByLabel("12mb").FocusAsync();
        await page.Keyboard.PressAsync("Space");
        await Assertions.Expect(page.Locator("#reckoned")).ToContainTextAsync("6,487.58 USD");
        await page.Locator("#reckoned details.fig summary").First.FocusAsync();
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page.Locator("#reckoned details.fig[open] .because").First).ToBeVisibleAsync();
    }

    [ChromiumFact]
    public async Task NewTicket_WithoutScript_IsRecorded()
    {
        ExampleContract.KeepWhereNoneIs(site.Mill);
        await using var visitor = await chromium.VisitorAsync(site.Address, 390, dark: false, script: false);
        var page = visitor.Page;
        await page.GotoAsync("/who?back=/intake/new");
        await page.GetByLabel("Your name").FillAsync("Ada Miller");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this name" }).ClickAsync();
        foreach (var (field, value) in Tickets.Worked("25-0914-031").Where(f => f.Key is "T.Ticket" or "T.At" or "T.Plate" or "T.Source" or "T.Class" or "T.Gross" or "T.Tare" or "T.Moisture" or "T.Protein" or "T.Dockage"))
        {
            await page.Locator($"[name='{field}']").FillAsync(value);
        }

        await page.Locator("[name='T.ProteinBasis'][value='12mb']").CheckAsync();
        await page.Locator("[name='T.Bin']").SelectOptionAsync("B01");
        await page.Locator("[name='T.Way']").SelectOptionAsync("PIT1 | LEG1");
        await page.GetByRole(AriaRole.Button, new() { Name = "Record as Ada Miller" }).ClickAsync();
        await Assertions.Expect(page.GetByText("Recorded.")).ToBeVisibleAsync();
        await Assertions.Expect(page.Locator(".pay")).ToContainTextAsync("6,487.58 USD");
    }

    [ChromiumFact]
    public async Task Threshold_Typed_ChangesTheListsInPlace()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        var page = visitor.Page;
        await page.GotoAsync("/tracing?code=25-0709-001");
        await page.EvaluateAsync("window.stayed = true");
        await page.GetByLabel("List packages with more than, kg").FillAsync("5000");
        await Assertions.Expect(page.Locator("#lists")).ToContainTextAsync("Lower the threshold");
        Assert.True(await page.EvaluateAsync<bool>("window.stayed === true"));
        await Assertions.Expect(page.Locator("#kg-slider")).ToHaveValueAsync("300");
        await Assertions.Expect(page.Locator("#packages")).ToContainTextAsync("None.");
    }
}
