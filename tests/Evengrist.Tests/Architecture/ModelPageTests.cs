using System.Text.RegularExpressions;
using Evengrist.Tests.Intake;

namespace Evengrist.Tests.Architecture;

public sealed partial class ModelPageTests
{
    private static readonly string[] Headings = ["Purpose", "Equations", "Validity", "Worked case", "Known gaps"];

    [Fact]
    public void Page_NamedInTheSources_StandsAndIsInTheIndex()
    {
        var named = Repository.Sources("src", ".cs").SelectMany(f => Named().Matches(Repository.Text(f)).Select(m => m.Value)).Distinct().ToList();
        Assert.Contains("docs/model/settlement.md", named);
        var index = Repository.Text("docs/model/README.md");
        foreach (var page in named)
        {
            Assert.True(File.Exists(Path.Combine(Repository.Root, page)), $"{page} is named in a source file and does not exist.");
            Assert.Contains($"({Path.GetFileName(page)})", index, StringComparison.Ordinal);
            Assert.All(Headings, h => Assert.Matches($@"(?m)^(## |\*\*){h}", Repository.Text(page)));
        }
    }

    [Fact]
    public void Page_Settlement_ShowsWhatTheCodePrints()
    {
        var page = Repository.Text("docs/model/settlement.md");
        var settled = Loads.Settled(Loads.Of(38_460m, 12_120m, Loads.Dockage, Loads.Moist, Loads.Protein), Loads.HardWinter);
        Assert.All(settled.Lines, line => Assert.Contains($"| {line.What} | {line} |", page, StringComparison.Ordinal));
    }

    [Fact]
    public void Glossary_Words_AreInAlphabeticalOrderAndOnce()
    {
        var words = Repository.Text("docs/glossary.md").Split('\n')
            .Where(l => l.StartsWith("| ", StringComparison.Ordinal) && !l.StartsWith("| word", StringComparison.Ordinal))
            .Select(l => l.Split('|')[1].Trim()).ToList();
        Assert.Equal(words.Order(StringComparer.OrdinalIgnoreCase), words);
        Assert.Equal(words.Distinct(StringComparer.OrdinalIgnoreCase), words);
    }

    [GeneratedRegex(@"docs/model/[a-z0-9-]+\.md")]
    private static partial Regex Named();
}
