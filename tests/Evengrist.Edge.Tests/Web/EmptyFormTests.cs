using System.Net;
using Evengrist.Edge.Tests.Web.Trucks;

namespace Evengrist.Edge.Tests.Web;

/// <summary>A form that comes without its fields is answered in words, as one whose fields are empty.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class EmptyFormTests(WebSite site)
{
    [Theory]
    [InlineData("/intake/parties", "party", "A party needs its code.")]
    [InlineData("/intake/parties", "field", "A field needs its code.")]
    [InlineData("/intake/parties", "vehicle", "A vehicle needs its plate.")]
    [InlineData("/intake/certificates", "certificate", "The first day is a date like")]
    [InlineData("/tracing/hold?code=25-0709-001&asof=2025-09-16T00:00", "hold", "A hold needs a name and a reason.")]
    public async Task Form_WithoutItsFields_SaysWhatIsMissing(string page, string handler, string words)
    {
        using var client = await Tickets.NamedAsync(site);
        using var answer = await WebSite.PostAsync(client, page, page, [new("_handler", handler)]);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Contains(words, Tickets.Plain(await answer.Content.ReadAsStringAsync()), StringComparison.OrdinalIgnoreCase);
    }
}
