using System.Text.RegularExpressions;
using Evengrist.Records.Laboratory;
using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>The form of a specification as a named person sees it.</summary>
[Collection(BrowserCollection.Name)]
public sealed class SpecificationFormTests(WebSite site, Chromium chromium)
{
    [ChromiumFact]
    public async Task Form_OfANamedPerson_IsAccessible_AndEnterKeepsIt()
    {
        await using var visitor = await chromium.VisitorAsync(site.Address, 1280, dark: false);
        var page = visitor.Page;
        await page.GotoAsync("/who?back=/laboratory/specifications/new");
        await page.GetByLabel("Your name").FillAsync("Ada Miller");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this name" }).ClickAsync();
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/laboratory/specifications/new$"));
        await visitor.FindsNoFaultAsync("/laboratory/specifications/new");
        foreach (var (label, text) in new[] { ("Code", "ENTER"), ("Flour, as on its pallets", "ZZ"), ("Basis", "14mb"), ("Most", "0.5") })
        {
            await page.GetByLabel(label, new() { Exact = true }).FillAsync(text);
        }

        await page.GetByLabel("Property", new() { Exact = true }).SelectOptionAsync("Ash");
        await page.GetByLabel("take this line out").CheckAsync();
        await page.GetByRole(AriaRole.Button, new() { Name = "Add a line" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Most", new() { Exact = true })).ToHaveValueAsync(""); // taken out, and an empty one in its place
        await page.GetByLabel("Property", new() { Exact = true }).SelectOptionAsync("Ash");
        await page.GetByLabel("Basis", new() { Exact = true }).FillAsync("14mb");
        await page.GetByLabel("Most", new() { Exact = true }).FillAsync("0.5");
        await page.Keyboard.PressAsync("Enter");
        await Assertions.Expect(page).ToHaveURLAsync(new Regex("/laboratory/specifications/ENTER"));
        Assert.Equal(0.5m, Assert.Single(Assert.Single(FlourSpecifications.Versions(site.Mill, "ENTER")).Specification.Items).Upper);
    }
}
