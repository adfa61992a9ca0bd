using Deque.AxeCore.Commons;
using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>One visitor with a page of their own. A page left open goes on listening to the mill and slows all that come after it, so a test closes its own.</summary>
public sealed class Visitor(IBrowserContext context, IPage page) : IAsyncDisposable
{
    // A year's first page waits for the year to be made.
    private const float Longest = 120_000;

    private const string Faults = "async () => (await axe.run({ resultTypes: ['violations'], preload: false })).violations.map(v => `${v.id}: ${v.help} ${v.nodes.slice(0, 3).map(n => n.html).join(' | ')}`)";

    private static readonly string Axe = new BundledAxeScriptProvider().GetScript();

    // Every layout and every set of colours once; the wide screen differs from the usual one in width alone.
    private static readonly (int Width, bool Dark, bool Rules)[] Looks = [(1920, false, false), (1280, false, true), (390, true, true)];

    public IPage Page => page;

    public ValueTask DisposeAsync() => context.DisposeAsync();

    public Task<IResponse?> OpenAsync(string path) => page.GotoAsync(path, new() { Timeout = Longest });

    /// <summary>
    /// Opens a page and holds it against what every page keeps, wide and light and narrow and dark: no fault of accessibility (axe-core's rules), no
    /// wider than the window, no complaint of the browser. The rules are put into the page once and run there: the package's own way of running them
    /// opens a second page for each run, which took most of the time of these tests.
    /// </summary>
    public async Task FindsNoFaultAsync(string path)
    {
        List<string> complaints = [];
        page.Console += (_, message) => complaints.AddRange(message.Type == "error" && !message.Text.Contains("404", StringComparison.Ordinal) ? [message.Text] : []);
        page.PageError += (_, error) => complaints.Add(error);
        await OpenAsync(path);
        await page.WaitForFunctionAsync("() => !document.getElementById('flow-data') || document.querySelector('#flow svg')"); // A flow sheet is drawn after its page has come.
        Assert.Equal("", await page.EvaluateAsync<string>("[...document.links].map(l => l.href).filter(h => h.includes('&amp;')).join(' ')")); // Written for HTML twice: what stands after it is lost.
        await page.EvaluateAsync(Axe);
        foreach (var (width, dark, rules) in Looks)
        {
            await page.SetViewportSizeAsync(width, 900);
            await page.EmulateMediaAsync(new() { ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light });
            await KeepAsync(path, width, dark);
            var look = $"{path} at {width} px, {(dark ? "dark" : "light")}:";
            var faults = rules ? await page.EvaluateAsync<string[]>(Faults) : [];
            Assert.True(faults.Length == 0, $"{look} {string.Join("\n", faults)}");
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, $"{look} wider than the window.");
        }

        Assert.Empty(complaints);
    }

    // Pictures to look at, where a folder for them is named.
    private async Task KeepAsync(string path, int width, bool dark)
    {
        if (Environment.GetEnvironmentVariable("EVENGRIST_PICTURES") is { Length: > 0 } folder)
        {
            var name = path.Trim('/') is { Length: > 0 } named ? string.Concat(named.Select(c => char.IsLetterOrDigit(c) ? c : '-')) : "today";
            await page.ScreenshotAsync(new() { Path = Path.Combine(folder, $"{name}-{width}-{(dark ? "dark" : "light")}.png"), FullPage = true });
        }
    }
}
