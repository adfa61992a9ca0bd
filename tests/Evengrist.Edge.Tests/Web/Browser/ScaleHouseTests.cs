using System.Diagnostics;
using System.Globalization;
using System.Text;
using Evengrist.Edge.Tests.Web.Trucks;
using Evengrist.Web.Sights.Trucks;
using Microsoft.Playwright;
using Xunit.Abstractions;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>An operator at the scale with a keyboard and nothing else, from the gate to the printed ticket.</summary>
/// <remarks>EVENGRIST_KEY_MS waits so long before each key, on the demonstration year, and tells the seconds: a measurement, and no part of what is asserted.</remarks>
[Collection(YearBrowserCollection.Name)]
public sealed class ScaleHouseTests(WebSite tiny, DemonstrationSite demonstration, Chromium chromium, ITestOutputHelper told)
{
    private static readonly int? KeyDelay = int.TryParse(Environment.GetEnvironmentVariable("EVENGRIST_KEY_MS"), NumberStyles.None, CultureInfo.InvariantCulture, out var ms) ? ms : null;

    [ChromiumFact]
    public async Task Ticket_ByKeyboardAlone_IsPrintedAfterTheLastWeight()
    {
        using var named = await Tickets.NamedAsync(tiny);
        await using var visitor = await chromium.VisitorAsync(KeyDelay is null ? tiny.Address : await demonstration.AddressAsync(), 1280, dark: false);
        var page = visitor.Page;
        await visitor.OpenAsync("/who?back=/intake/arrive");
        await page.GetByLabel("Your name").FillAsync("Ada Miller");
        await page.GetByRole(AriaRole.Button, new() { Name = "Keep this name" }).ClickAsync();
        await Assertions.Expect(page.GetByLabel("Plate")).ToBeFocusedAsync();

        var whole = Stopwatch.StartNew();
        await TypeAsync(page, "KS 4711", "Tab", "DS-2", "Tab", "HW", "Tab", "Tab");
        await page.GetByLabel("Contract").SelectOptionAsync(KeyDelay is null ? ExampleContract.Terms.Title : "HW-2025 v1");
        await TypeAsync(page, "Tab", "Tab", "Enter");
        await NextAsync(page, "#I-Gross", "38460");
        await Assertions.Expect(page.Locator("#P-Moisture")).ToBeFocusedAsync();
        await TypeAsync(page, "12.4", "Tab", "0.8", "Tab", "13.1", "Tab");
        await page.Locator("[name='P.ProteinBasis']").SelectOptionAsync("12mb");
        await TypeAsync(page, "Tab", "Enter");
        await Assertions.Expect(page.Locator("#D-Decision")).ToBeFocusedAsync();
        await page.Locator("[name='D.Bin']").SelectOptionAsync(KeyDelay is null ? "B90" : "B04");
        await page.GetByRole(AriaRole.Button, new() { Name = "Decide as Ada Miller" }).FocusAsync();
        await TypeAsync(page, "Enter");
        await Assertions.Expect(page.Locator("#O-Tare")).ToBeFocusedAsync();

        var last = Stopwatch.StartNew();
        await NextAsync(page, "#O-Tare", "12120");
        await Assertions.Expect(page.GetByRole(AriaRole.Link, new() { Name = "PDF, A4" })).ToBeFocusedAsync();
        var download = await page.RunAndWaitForDownloadAsync(() => TypeAsync(page, "Enter"));
        var pdf = await File.ReadAllBytesAsync(await download.PathAsync());
        told.WriteLine(string.Create(CultureInfo.InvariantCulture, $"from the last weight to the PDF {last.Elapsed.TotalSeconds:0.0} s, from the gate {whole.Elapsed.TotalSeconds:0.0} s, {KeyDelay ?? 0} ms before each key"));
        Assert.StartsWith("%PDF-", Encoding.ASCII.GetString(pdf[..5]), StringComparison.Ordinal);
        await Assertions.Expect(page.Locator(".pay").First).ToContainTextAsync("USD");
        await Assertions.Expect(page.GetByText("26,340").First).ToBeVisibleAsync();
    }

    private static async Task NextAsync(IPage page, string field, string weight)
    {
        await Assertions.Expect(page.Locator(field)).ToBeFocusedAsync();
        await TypeAsync(page, weight, "Enter");
    }

    private static async Task TypeAsync(IPage page, params string[] keys)
    {
        foreach (var key in keys.SelectMany(k => k is "Tab" or "Enter" ? [k] : k.Select(c => c == ' ' ? "Space" : c.ToString())))
        {
            await Task.Delay(KeyDelay ?? 0);
            await page.Keyboard.PressAsync(key);
        }
    }
}
