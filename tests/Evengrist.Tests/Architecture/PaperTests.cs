using System.Text.RegularExpressions;

namespace Evengrist.Tests.Architecture;

/// <summary>What the written pages say of each other and of the code.</summary>
public sealed partial class PaperTests
{
    private static readonly string[] Pages = ["README.md", "CONTRIBUTING.md", "CHANGELOG.md", "SECURITY.md", .. new[] { "docs", "bench", "samples" }.SelectMany(f => Repository.Sources(f, ".md"))];

    private static readonly Lazy<string> Code = new(() => string.Join('\n', Repository.Sources("src", ".cs").Select(Repository.Text)));

    [Fact]
    public void Links_FromEveryPage_LeadToAFile() =>
        Assert.Empty(Pages.SelectMany(page => Link().Matches(Repository.Text(page)).Select(l => l.Groups[1].Value)
            .Where(target => !target.Contains("://", StringComparison.Ordinal) && !target.StartsWith('#'))
            .Where(target => !Path.Exists(Path.Combine(Repository.Root, Path.GetDirectoryName(page)!, target.Split('#')[0])))
            .Select(target => $"{page} -> {target}")));

    [Theory]
    [InlineData("docs/model")]
    [InlineData("docs/decisions")]
    public void Index_OfAFolder_ListsEachPageOnce(string folder)
    {
        var listed = Link().Matches(Repository.Text($"{folder}/README.md")).Select(l => l.Groups[1].Value).Order(StringComparer.Ordinal);
        Assert.Equal(Repository.Sources(folder, ".md").Select(f => Path.GetFileName(f)).Where(f => f != "README.md"), listed);
    }

    [Fact]
    public void Decisions_EachPage_HasANumberOfItsOwnAndTheFourParts()
    {
        var pages = Repository.Sources("docs/decisions", ".md").Where(f => !f.EndsWith("README.md", StringComparison.Ordinal)).ToList();
        Assert.Equal(pages.Count, pages.Select(p => Path.GetFileName(p)[..4]).Distinct().Count());
        Assert.All(pages, p =>
        {
            var text = Repository.Text(p);
            Assert.StartsWith($"# {Path.GetFileName(p)[..4]} ", text, StringComparison.Ordinal);
            Assert.All(new[] { "**Context.**", "**Choice.**", "**Price.**", "**Revisit when**" }, part => Assert.Contains(part, text, StringComparison.Ordinal));
        });
    }

    [Fact]
    public void Glossary_NamesInTheCode_AreInTheCode()
    {
        var names = Name().Matches(Repository.Text("docs/glossary.md")).Where(n => char.IsAsciiLetterUpper(n.Groups[1].Value.TrimStart('.')[0]) && !n.Groups[1].Value.Any(char.IsAsciiDigit))
            .SelectMany(n => n.Groups[1].Value.Split('.', StringSplitOptions.RemoveEmptyEntries)).Distinct().ToList();
        Assert.True(names.Count > 30, "The names were not found.");
        Assert.DoesNotContain(names, n => !Regex.IsMatch(Code.Value, $@"\b{n}\b"));
    }

    [GeneratedRegex(@"\]\(([^)\s]+)\)")]
    private static partial Regex Link();

    [GeneratedRegex("`([A-Za-z.]+)`")]
    private static partial Regex Name();
}
