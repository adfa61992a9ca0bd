using Deque.AxeCore.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>The parts of sampling on the demonstration, in a real browser.</summary>
[Collection(BrowserCollection.Name)]
public sealed class SamplingPageTests(DemonstrationSite site, Chromium chromium)
{
    [ChromiumTheory]
    [InlineData("plan", "/intake/sampling", 1280, false)]
    [InlineData("scatter", "/intake/sampling?part=plan&rule=eu-mycotoxin&vehicle=flat&seed=25-0709-061", 390, true)]
    [InlineData("edge", "/intake/sampling?part=edge&ticket=25-0709-061", 390, true)]
    [InlineData("test", "/intake/sampling?part=test&ticket=25-0801-012&waiting=3", 390, true)]
    [InlineData("screen", "/intake/sampling?part=screen&tickets=25-0709-060+25-0709-061+25-0709-062&composite=0.4", 1280, true)]
    [InlineData("screen", "/intake/sampling?part=screen&tickets=25-0709-060+25-0709-061+25-0709-062&composite=0.4", 390, false)]
    [InlineData("risks", "/intake/sampling?part=risks", 390, true)]
    [InlineData("papers", "/intake/sampling?part=papers", 390, false)]
    [InlineData("shelf", "/intake/sampling?part=shelf", 390, true)]
    [InlineData("ticket", "/intake/25-0801-011", 1280, true)]
    [InlineData("ticket", "/intake/25-0801-011", 390, false)]
    public async Task Page_OfSampling_IsAccessibleFitsAndBreaksNoPolicy(string name, string path, int width, bool dark)
    {
        var page = await chromium.VisitorAsync(await site.AddressAsync(), width, dark);
        List<string> complaints = [];
        page.Console += (_, message) => complaints.AddRange(message.Type == "error" ? [message.Text] : []);
        await page.GotoAsync(path, new() { Timeout = 120_000 });
        if (Environment.GetEnvironmentVariable("EVENGRIST_PICTURES") is { Length: > 0 } folder)
        {
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"sampling-{name}-{width}-{(dark ? "dark" : "light")}.png"), FullPage = true });
        }

        Assert.Empty((await page.RunAxe()).Violations.Select(v => $"{v.Id}: {v.Help} {string.Join(" | ", v.Nodes.Take(3).Select(n => n.Html))}"));
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, "The page is wider than the window.");
        Assert.Empty(complaints);
    }
}
