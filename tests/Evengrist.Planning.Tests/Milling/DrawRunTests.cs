using Evengrist.Milling.Draws;
using Evengrist.Milling.Learning;
using Evengrist.Milling.OnPaper;
using Evengrist.Planning.Milling;
using Evengrist.Tests.Milling;

namespace Evengrist.Planning.Tests.Milling;

public sealed class DrawRunTests
{
    private static readonly DrawsSpec Spec = new(SmallMill.Sheet, SmallMill.Wheat, MillTuning.None(SmallMill.Sheet))
    {
        Try = new SheetChange { GapMicrometres = new Dictionary<string, double> { ["2B"] = 220 } }, Draws = 400, Seed = 20261129,
    };

    [Fact]
    public void Draws_OnOneCoreAndOnThree_AreTheSame()
    {
        var (one, three) = (Drawn(DrawRun.Draw(Spec, 1)), Drawn(DrawRun.Draw(Spec, 3)));
        Assert.Equal(one.Now.Products, three.Now.Products);
        Assert.Equal(one.Now.Passages, three.Now.Passages);
        Assert.Equal(one.Change!.Products, three.Change!.Products);
        Assert.NotEqual(one.Now.Products, Drawn(DrawRun.Draw(Spec with { Seed = 2 }, 2)).Now.Products);
        Assert.Equal(400, one.Draws + one.Unsolved);
    }

    [Fact]
    public void Draws_Stopped_CountTheFirstOrSayTooFew()
    {
        var stopped = Assert.IsType<DrawsStopped>(DrawRun.Draw(Spec with { Draws = 20_000 }, 2, null, new CancellationToken(true)));
        Assert.Equal(0, stopped.Draws);
        using var later = new CancellationTokenSource();
        var some = Assert.IsType<MillsDrawn>(DrawRun.Draw(Spec with { Draws = 20_000 }, 2, new Telling(_ => later.Cancel(), 800), later.Token));
        Assert.False(some.IsWhole);
        Assert.InRange(some.Draws.Draws, DrawsSpec.Fewest, 5000);

        // What was drawn by then is what drawing as many would have given.
        var same = Drawn(DrawRun.Draw(Spec with { Draws = some.Draws.Draws + some.Draws.Unsolved }));
        Assert.Equal(same.Now.Products, some.Draws.Now.Products);
    }

    [Fact]
    public void Draws_TellHowFarTheyAre()
    {
        var told = new List<int>();
        DrawRun.Draw(Spec, 2, new Telling(n => { lock (told) { told.Add(n); } }, 0));
        Assert.Equal(50, told.Count);
        Assert.Equal(400, told.Max());
    }

    [Theory]
    [InlineData(0)]
    [InlineData(199)]
    [InlineData(100_001)]
    public void Draws_TooFewOrMany_AreRefused(int draws) => Assert.Contains("200", Assert.Single(Assert.IsType<MillsNotDrawn>(DrawRun.Draw(Spec with { Draws = draws })).Reasons), StringComparison.Ordinal);

    private static MillDraws Drawn(DrawsOutcome outcome) => Assert.IsType<MillsDrawn>(outcome).Draws;

    private sealed class Telling(Action<int> tell, int from) : IProgress<int>
    {
        public void Report(int value)
        {
            if (value >= from)
            {
                tell(value);
            }
        }
    }
}
