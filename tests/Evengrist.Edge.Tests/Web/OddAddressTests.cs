using System.Net;
using System.Reflection;
using Evengrist.Web.Start;
using Microsoft.AspNetCore.Components;

namespace Evengrist.Edge.Tests.Web;

/// <summary>Whatever words stand in a page's address, typed by hand or cut short in a message, the page answers.</summary>
[Collection(WebSiteCollection.Name)]
public sealed class OddAddressTests(WebSite site)
{
    private static readonly Type[] Parts = [.. typeof(EvengristApp).Assembly.GetTypes().Where(t => t.IsAssignableTo(typeof(IComponent)))];

    /// <summary>Every page there is, a code or number in its path filled in with one that the tiny mill has.</summary>
    public static TheoryData<string> Paths => [.. Parts.SelectMany(t => t.GetCustomAttributes<RouteAttribute>()).Select(r => r.Template).Order(StringComparer.Ordinal).Select(Filled)];

    [Theory]
    [MemberData(nameof(Paths))]
    public async Task Page_AskedOddly_IsNoFaultOfTheProgram(string path)
    {
        using var client = site.Client();
        foreach (var query in new[] { "done=abc&page=abc&before=abc&version=abc", "done=2&page=2147483647&before=9223372036854775807&version=99999999999&kind=bin", "done=&page=-1&before=-1&version=&kind=7&part=shelf", "done=true&done=abc&part=papers" })
        {
            using var answer = await client.GetAsync(new Uri($"{path}?{query}", UriKind.Relative));
            Assert.True(answer.StatusCode < HttpStatusCode.InternalServerError, $"{path}?{query} answers {answer.StatusCode}");
        }
    }

    [Fact]
    public void EveryPage_TakesItsAddressAsText()
    {
        // The framework answers a word that its binder cannot read as a number or a yes with a 500, before the page is asked.
        var taken = Parts.SelectMany(t => t.GetProperties()).Where(p => p.GetCustomAttribute<SupplyParameterFromQueryAttribute>() is not null).ToArray();
        Assert.NotEmpty(taken);
        Assert.Empty(taken.Where(p => p.PropertyType != typeof(string) && p.PropertyType != typeof(string[])).Select(p => $"{p.DeclaringType!.Name}.{p.Name}"));
    }

    [Theory]
    [InlineData("/mill?done=true", true)]
    [InlineData("/mill?done=abc", false)]
    [InlineData("/mill", false)]
    public async Task Page_SaysThatItKept_OnlyWhereTheAddressDoes(string address, bool says)
    {
        using var client = site.Client();
        Assert.Equal(says, (await client.GetStringAsync(new Uri(address, UriKind.Relative))).Contains("Kept.", StringComparison.Ordinal));
    }

    private static string Filled(string template) => template
        .Replace("/bins/{Code}", "/bins/B01", StringComparison.Ordinal).Replace("/intake/{Code}", "/intake/25-0709-001", StringComparison.Ordinal)
        .Replace("{Number:long}", "1", StringComparison.Ordinal).Replace("{Code:int}", "404", StringComparison.Ordinal);
}
