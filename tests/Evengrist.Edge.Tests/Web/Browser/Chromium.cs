using Microsoft.Playwright;

namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>The browser of this machine, started once for all tests that share it.</summary>
public sealed class Chromium : IAsyncLifetime
{
    public const string Missing = "Chromium is missing (looked for chromium-headless-shell, chromium, chromium-browser and google-chrome on the path; EVENGRIST_CHROMIUM names another).";

    // The shell without a window first: the same engine at half the processor time.
    private static readonly string[] Names = ["chromium-headless-shell", "chromium", "chromium-browser", "google-chrome"];
    private static readonly string[] Quiet = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"];
    private IPlaywright? playwright;
    private IBrowser? browser;

    /// <summary>Where the browser is; null where there is none.</summary>
    public static string? Path { get; } = Environment.GetEnvironmentVariable("EVENGRIST_CHROMIUM") is { Length: > 0 } named ? named : Names.Select(OnThePath).FirstOrDefault(File.Exists);

    public async Task InitializeAsync()
    {
        if (Path is not null)
        {
            playwright = await Playwright.CreateAsync();
            browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = Path, Args = Quiet });
        }
    }

    public async Task DisposeAsync()
    {
        if (browser is not null)
        {
            await browser.DisposeAsync();
        }

        playwright?.Dispose();
    }

    private static string? OnThePath(string name) => (Environment.GetEnvironmentVariable("PATH") ?? "").Split(System.IO.Path.PathSeparator)
        .Select(folder => System.IO.Path.Combine(folder, name)).FirstOrDefault(File.Exists);

    /// <summary>A fresh visitor, to be disposed by the test.</summary>
    public async Task<Visitor> VisitorAsync(Uri address, int width, bool dark, bool script = true)
    {
        var context = await browser!.NewContextAsync(new()
        {
            BaseURL = address.ToString(), ViewportSize = new() { Width = width, Height = 900 },
            ColorScheme = dark ? ColorScheme.Dark : ColorScheme.Light, JavaScriptEnabled = script, ReducedMotion = ReducedMotion.Reduce,
        });
        return new Visitor(context, await context.NewPageAsync());
    }
}

/// <summary>Tests that share one browser and a site of a small mill.</summary>
[CollectionDefinition(Name)]
public sealed class BrowserCollection : ICollectionFixture<WebSite>, ICollectionFixture<Chromium>
{
    public const string Name = "browser";
}

/// <summary>Tests that share another browser, at work beside the first, with a small mill of their own and the demonstration.</summary>
[CollectionDefinition(Name)]
public sealed class YearBrowserCollection : ICollectionFixture<WebSite>, ICollectionFixture<DemonstrationSite>, ICollectionFixture<Chromium>
{
    public const string Name = "browser on the year";
}
