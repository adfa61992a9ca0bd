using System.Globalization;
using Evengrist.Intake.Sampling;
using Evengrist.Tests.Architecture;

namespace Evengrist.Tests.Intake.Sampling;

/// <summary>The worked cases that stand on the pages, read from the pages and run.</summary>
public sealed class SamplingPageTests
{
    [Fact]
    public void Page_DonVariance_ShowsWhatTheCodeGives()
    {
        var rows = Rows("docs/model/sampling.md", "| C ppm |");
        Assert.Equal(5, rows.Count);
        Assert.All(rows, r =>
        {
            var parts = DonVariance.Of(N(r[0]), new DonSizes(N(r[1]), N(r[2]), (int)N(r[3])));
            Assert.Equal((r[4], r[5]), (F(parts.Total, 4), F(parts.StandardDeviation, 4)));
            Assert.Equal(N(r[6]), 100 * parts.StandardDeviation / N(r[0]), 0.051);
        });
    }

    [Fact]
    public void Page_Acceptance_ShowsWhatTheCodeGives()
    {
        var table = Rows("docs/model/sampling.md", "| accept at |", withHead: true);
        Assert.Equal(3, table.Count);
        Assert.All(table.Skip(1), row => Assert.All(row.Skip(1).Zip(table[0].Skip(1)), cell =>
            Assert.Equal(N(cell.First), AcceptanceModel.Accepted(new AcceptanceSpec(1, N(row[0]), DonSizes.Base), N(cell.Second)), 0.00051)));
    }

    [Fact]
    public void Page_EdgeDoubt_ShowsWhatTheCodeGives() => Assert.All(Rows("docs/model/sampling.md", "| reads |"), row =>
    {
        var doubt = Assert.Single(EdgeModel.Doubts(new EdgeSpec(N(row[0]), 0.25, [new Edge(13.0, "band")])));
        Assert.Equal((row[1], row[2]), ($"{F(100 * doubt.ChanceAtLeast, 1)} %", doubt.MoreProbes!.Value.ToString(CultureInfo.InvariantCulture)));
    });

    [Fact]
    public void Page_TestOrNot_ShowsWhatTheCodeGives()
    {
        var rows = Rows("docs/model/test-or-not.md", "| case |");
        var falling = new TestSpec(new LoadPrior(PriorScale.Liquefaction, 26, 6), 300, 26) { WrongBinPerTonne = 12, DivertedGoodPerTonne = 6, RelativeError = 0.05 };
        TestSpec[] specs = [falling, falling with { DiscountPerTonne = 4 }, new(new LoadPrior(PriorScale.Lognormal, 0.7, 0.5), 1, 26) { WrongBinPerTonne = 15, Claim = 200, DivertedGoodPerTonne = 5 }];
        Assert.Equal(specs.Length, rows.Count);
        Assert.All(specs.Zip(rows), pair =>
        {
            var outcome = TestModel.Ask(pair.First);
            Assert.Equal((pair.Second[1], pair.Second[2]), (F(outcome.ChanceBad, 3), F(outcome.LossUntested, 1)));
            Assert.Equal(N(pair.Second[3]), outcome.Value, 0.4);
        });
    }

    [Fact]
    public void Page_Rules_NamesEachWithItsMark()
    {
        var rows = Rows("docs/model/sampling.md", "| rule |");
        Assert.Equal(ProbePatterns.All.Select(p => p.Name), rows.Select(r => r[0]));
        Assert.All(rows.Zip(ProbePatterns.All), pair => Assert.Equal(pair.Second.Standing != Standing.Read, pair.First[2].Contains("from memory", StringComparison.Ordinal)));
    }

    private static List<string[]> Rows(string page, string head, bool withHead = false)
    {
        var lines = Repository.Text(page).Split('\n').SkipWhile(l => !l.StartsWith(head, StringComparison.Ordinal)).TakeWhile(l => l.StartsWith('|')).ToList();
        Assert.NotEmpty(lines);
        return [.. lines.Where((_, i) => i != 1 && (withHead || i > 0)).Select(l => l.Trim('|').Split('|').Select(c => c.Trim()).ToArray())];
    }

    private static double N(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    private static string F(double value, int decimals) => value.ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
