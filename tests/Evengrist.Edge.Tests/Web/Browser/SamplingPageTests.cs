namespace Evengrist.Edge.Tests.Web.Browser;

/// <summary>The parts of sampling on the demonstration, in a real browser.</summary>
[Collection(YearBrowserCollection.Name)]
public sealed class SamplingPageTests(DemonstrationSite site, Chromium chromium)
{
    [ChromiumTheory]
    [InlineData("/intake/sampling")]
    [InlineData("/intake/sampling?part=plan&rule=eu-mycotoxin&vehicle=flat&seed=25-0709-061")]
    [InlineData("/intake/sampling?part=edge&ticket=25-0709-061")]
    [InlineData("/intake/sampling?part=test&ticket=25-0801-012&waiting=3")]
    [InlineData("/intake/sampling?part=screen&tickets=25-0709-060+25-0709-061+25-0709-062&composite=0.4")]
    [InlineData("/intake/sampling?part=risks")]
    [InlineData("/intake/sampling?part=papers")]
    [InlineData("/intake/sampling?part=shelf")]
    [InlineData("/intake/25-0801-011")]
    public async Task Page_OfSampling_IsAccessibleFitsAndBreaksNoPolicy(string path)
    {
        await using var visitor = await chromium.VisitorAsync(await site.AddressAsync(), 1280, dark: false);
        await visitor.FindsNoFaultAsync(path);
    }
}
