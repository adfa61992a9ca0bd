using Evengrist.Laboratory.Watch;

namespace Evengrist.Tests.Laboratory.Watch;

/// <summary>Meter or wheat on the twelve pairs of the fictional mill (posed; cumulative sums by hand) and on cases against them.</summary>
public sealed class WatchTests
{
    [Fact]
    public void Pairs_OfTheMill_ConvictTheInstrumentAtTheEighth()
    {
        var all = WatchModel.Of(WatchCases.OfTheMill(12));
        Assert.Equal((WatchVerdict.Instrument, WatchCause.Instrument, 4, 8), (all.Verdict, all.Likeliest.Cause, all.Likeliest.After!.Value, all.Since!.Value));
        Assert.Equal((6, 0.46), (all.SumAlarm!.Value, Math.Round(all.Sums[5].Above, 2))); // k 0.05, h 0.40: 0.24 − 0.05, then 0.32 − 0.05 more.
        Assert.InRange(all.Likeliest.StartProbability!.Value, 0.8, 1);
        Assert.InRange(all.Likeliest.Size!.Value, 0.279 - (2 * all.Likeliest.SizeDeviation!.Value), 0.279 + (2 * all.Likeliest.SizeDeviation!.Value));
        Assert.Equal(1, all.Rivals.Sum(r => r.Probability), 1e-9);
        for (var pairs = 2; pairs < 8; pairs++)
        {
            Assert.Equal(WatchVerdict.None, WatchModel.Of(WatchCases.OfTheMill(pairs)).Verdict);
        }

        var eight = WatchModel.Of(WatchCases.OfTheMill(8));
        Assert.Equal((WatchVerdict.Instrument, 4), (eight.Verdict, eight.Likeliest.After));
    }

    [Fact]
    public void Pairs_TooFew_AskForMore_AndMoreIsEnough()
    {
        foreach (var pairs in new[] { 2, 4, 6, 7 })
        {
            var few = WatchModel.Of(WatchCases.OfTheMill(pairs));
            Assert.Equal(WatchVerdict.None, few.Verdict);
            Assert.InRange(few.More!.Value, 1, 20);
        }

        Assert.True(WatchModel.Of(WatchCases.OfTheMill(7)).More < WatchModel.Of(WatchCases.OfTheMill(2)).More);
    }

    // Both rise by 0.25 after the fourth pair; the instrument's own move is taken out.
    [Fact]
    public void Pairs_ThatRiseTogether_ConvictTheFlour()
    {
        var outcome = WatchModel.Of(WatchCases.Spec(Together()));
        Assert.Equal((WatchVerdict.Flour, 4, null), (outcome.Verdict, outcome.Likeliest.After, outcome.SumAlarm));
        Assert.Equal(0.25, outcome.Likeliest.Size!.Value, 2 * outcome.Likeliest.SizeDeviation!.Value);
    }

    [Fact]
    public void Pairs_WithTheWheatRead_TellMillFromWheat()
    {
        var wheat = WatchCases.Reference.Select((r, i) => 13.1 + (0.3 * (WatchCases.Reference[^(i + 1)] - 11.9))).ToArray();
        var moved = Together().ToArray();
        WatchVerdict Judge(double rise) => WatchModel.Of(WatchCases.Spec(moved.Concat(moved.Skip(4)).Select((p, i) => p with { Wheat = wheat[i % 12] + (i < 4 ? 0 : rise) }))).Verdict;
        Assert.Equal((WatchVerdict.Mill, WatchVerdict.Flour), (Judge(0), Judge(0.25)));
    }

    [Fact]
    public void Pairs_ThatStay_SayNothingMovedOnlyWhenAShiftWouldShow()
    {
        var quiet = WatchCases.Reference.Zip(WatchCases.Read, (r, i) => (r, i)).Select((p, n) => new WatchdogPair(p.r, n < 4 ? p.i : p.i - 0.28)).ToArray();
        Assert.Equal(WatchVerdict.None, WatchModel.Of(WatchCases.Spec(quiet.Take(4))).Verdict);
        Assert.Equal(WatchVerdict.NothingMoved, WatchModel.Of(WatchCases.Spec(quiet.Concat(quiet))).Verdict);
    }

    // Twenty pairs without chance, then pairs high by so much: a move of one and a half times a pair's standard deviation waits for its eighth pair, one of four times is named at its second; and what was said stands.
    [Theory]
    [InlineData(0.19, 8)]
    [InlineData(0.48, 2)]
    public void Verdict_ComesByHowLongAMoveHasHeld_AndStands(double shift, int held)
    {
        var pairs = Enumerable.Range(0, 34).Select(i => new WatchdogPair(11.9, i < 20 ? 11.9 : 11.9 + shift));
        var said = WatchHistory.Of(WatchCases.Spec(pairs) with { StatedCounts = null, Swing = 0.1 }).ToArray();
        Assert.All(said, s => Assert.Equal(s.Pairs < 20 + held ? WatchVerdict.None : WatchVerdict.Instrument, s.Moved));
    }

    // What is found alone at the eighth pair would not be enough at the ninth: it stands by what was said.
    [Fact]
    public void Verdict_OnceReached_StandsWhileLikelierThanNot_AndNoLonger()
    {
        WatchFinding Finding(double instrument, double fit) => new(20, [new(WatchCause.Instrument, instrument), new(WatchCause.None, 1 - instrument)], fit);
        Assert.Equal(WatchVerdict.Instrument, Finding(0.7, 1.2).After(WatchVerdict.None));
        Assert.Equal((WatchVerdict.None, WatchVerdict.Instrument, WatchVerdict.None), (Finding(0.7, 0.3).After(WatchVerdict.None), Finding(0.7, 0.3).After(WatchVerdict.Instrument), Finding(0.4, 0.1).After(WatchVerdict.Instrument)));
        Assert.Equal(WatchVerdict.None, new WatchFinding(20, [new(WatchCause.Instrument, 0.6), new(WatchCause.Both, 0.35), new(WatchCause.None, 0.05)], 40).After(WatchVerdict.None)); // Something moved, but what is not sure.
    }

    [Fact]
    public void Pairs_ThatSlideApart_ConvictTheInstrumentAsDrifting()
    {
        var outcome = WatchModel.Of(WatchCases.Spec(Enumerable.Range(0, 20).Select(i => new WatchdogPair(WatchCases.Reference[i % 12], WatchCases.Reference[i % 12] + (i < 8 ? 0.01 : 0.05 * (i - 7))))));
        Assert.Equal((WatchVerdict.Instrument, WatchCause.InstrumentDrift), (outcome.Verdict, outcome.Likeliest.Cause));
        Assert.Equal(0.05, outcome.Likeliest.Size!.Value, 0.02);
    }

    // What adds the same to every reading changes nothing; what turns every sign turns the size.
    [Fact]
    public void Pairs_MovedOrMirrored_AreJudgedAlike()
    {
        var one = WatchModel.Of(WatchCases.OfTheMill(12));
        var lifted = WatchModel.Of(WatchCases.Spec(WatchCases.OfTheMill(12).Pairs.Select(p => new WatchdogPair(p.Reference + 3, p.Instrument + 3))));
        var mirrored = WatchModel.Of(WatchCases.Spec(WatchCases.OfTheMill(12).Pairs.Select(p => new WatchdogPair(-p.Reference, -p.Instrument))));
        Assert.Equal(one.Likeliest.Probability, lifted.Likeliest.Probability, 1e-9);
        Assert.Equal((one.Likeliest.Probability, -one.Likeliest.Size!.Value), (mirrored.Likeliest.Probability, mirrored.Likeliest.Size!.Value), (a, b) => Math.Abs(a.Item1 - b.Item1) + Math.Abs(a.Item2 - b.Item2) < 1e-9);
    }

    [Fact]
    public void Quiet_OfFourPairs_IsTakenCautiously()
    {
        var by = WatchDeviations.Of(new WatchSpec(WatchCases.OfTheMill(12).Pairs) { Quiet = 4 });
        Assert.Equal(0.11405, by.Pair, 1e-5); // 0.066018 · √(3/1.00517): the chi-square of 3 that one in five stays below, printed tables 1.005.
    }

    [Fact]
    public void Faults_OfWhatCannotBeJudged_NameEach()
    {
        Assert.Contains("2 to 500", Assert.Single(WatchCases.OfTheMill(1).Faults()), StringComparison.Ordinal);
        Assert.Contains("has to be known", Assert.Single(new WatchSpec(WatchCases.OfTheMill(5).Pairs).Faults()), StringComparison.Ordinal);
        Assert.Contains("has the reference's within", Assert.Single((WatchCases.OfTheMill(5) with { PairDeviation = 0.04 }).Faults()), StringComparison.Ordinal);
        Assert.Contains("with every pair or with none", Assert.Single(WatchCases.Spec([new(1, 1, 2), new(1, 1)]).Faults()), StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => WatchModel.Of(WatchCases.OfTheMill(1)));
    }

    private static IEnumerable<WatchdogPair> Together() => WatchCases.Reference.Zip(WatchCases.Read, (r, i) => (r, i)).Select((p, n) => n < 4 ? new WatchdogPair(p.r, p.i) : new WatchdogPair(p.r + 0.25, p.i - 0.28 + 0.25));
}
