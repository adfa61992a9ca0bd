using Evengrist.Tests.Intake;

namespace Evengrist.Tests.Architecture;

public sealed class ModelPageTests
{
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
}
