using Evengrist.Laboratory.Bake;

namespace Evengrist.Tests.Laboratory.Bake;

public sealed class BakeTests
{
    private static readonly BakeFormula Pan = new("pan bread", [new("salt", 1.5), new("yeast", 3)], 62, []);

    [Fact] // A law: dry matter of the flour and water of the dough stay whatever moisture the flour has.
    public void For_OtherMoistures_KeepsDryMatterAndWater()
    {
        var (at14, dry) = (Pan.For(100, 14), Pan.For(100, 11.5));
        Assert.Equal((100, 62), (at14.FlourGrams, at14.WaterGrams));
        Assert.Equal(97.175, dry.FlourGrams, 3); // 100·86/88.5.
        Assert.Equal(86, dry.FlourGrams * 0.885, 9);
        Assert.Equal(162, dry.FlourGrams + dry.WaterGrams, 9);
        Assert.Equal([1.5, 3.0], dry.Others.Select(o => o.Grams));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pan.For(0, 14));
        Assert.Throws<ArgumentOutOfRangeException>(() => Pan.For(100, 25));
        Assert.Equal(4, new BakeFormula("", [new("salt", 0), new("Salt", 200)], 200, []).Faults().Count(f => f.Length > 0) - 1);
    }

    [Fact] // LS-53, ours, computed with R: t.test and wilcox.test, paired.
    public void Paired_OfThePosedLoaves_IsAsOfR()
    {
        var bake = PairedBake.Of([845, 862, 838, 870, 851, 848, 866, 859], [852, 860, 849, 881, 855, 861, 869, 868]);
        Assert.Equal((7, 5.042675, 3.926287, 0.0057028), (bake.Mean, Math.Round(bake.Deviation, 6), Math.Round(bake.T!.Value, 6), Math.Round(bake.P!.Value, 7)));
        Assert.Equal((2.784218, 11.215782), (Math.Round(bake.Lower, 6), Math.Round(bake.Upper, 6)));
        Assert.Equal(0.0207, bake.SignedRankP!.Value, 4);
        Assert.Null(PairedBake.Of([1, 2], [2, 3]).T);
        Assert.Null(PairedBake.Of([1, 2], [2, 3]).SignedRankP);
        Assert.Throws<ArgumentException>(() => PairedBake.Of([1, 2], [2]));
    }

    [OpenDataFact] // LS-54: computed with R 4.2.2 on the data set cake of lme4.
    public void SplitPlot_Cakes_IsAsOfR()
    {
        var rows = OpenData.Csv("cake-bake.csv");
        var trial = SplitPlot.Of([.. rows.GroupBy(r => r["recipe"]).Select(r => (IReadOnlyList<IReadOnlyList<double>>)[.. r.GroupBy(d => d["replicate"]).Select(d => (IReadOnlyList<double>)[.. d.OrderBy(c => c["temp"], StringComparer.Ordinal).Select(c => double.Parse(c["angle"], System.Globalization.CultureInfo.InvariantCulture))])])]);
        Assert.Equal([135.1, 11402.7, 2100.3, 206.0, 4298.9], new[] { trial.Recipe, trial.Dough, trial.Treatment, trial.Both, trial.Rest }.Select(l => Math.Round(l.Squares, 1)));
        Assert.Equal([2, 42, 5, 10, 210], new[] { trial.Recipe, trial.Dough, trial.Treatment, trial.Both, trial.Rest }.Select(l => l.Freedom));
        Assert.Equal((0.2488, 0.7809), (Math.Round(trial.Recipe.F!.Value, 4), Math.Round(trial.Recipe.P!.Value, 4)));
        Assert.Equal(20.5199, trial.Treatment.F!.Value, 4);
        Assert.Equal((1.0062, 0.4393), (Math.Round(trial.Both.F!.Value, 4), Math.Round(trial.Both.P!.Value, 4)));
        Assert.Equal(41.8370, trial.DoughVariance, 4);
        Assert.Throws<ArgumentException>(() => SplitPlot.Of([[[1, 2], [1, 2]], [[1, 2]]]));
    }

    [Fact] // LS-55: equal the tables of ISO 4120 and ISO 5495, from memory; computed with R.
    public void LeastRight_OfTriangleAndPairs_IsAsPrinted()
    {
        int?[] Least(double chance, double level, params int[] tests) => [.. tests.Select(n => Discrimination.LeastRight(n, chance, level))];
        Assert.Equal([8, 10, 13, 15, 18, 22, 27], Least(Discrimination.TriangleChance, 0.05, 12, 18, 24, 30, 36, 48, 60));
        Assert.Equal([9, 12, 15, 17, 20, 25, 30], Least(Discrimination.TriangleChance, 0.01, 12, 18, 24, 30, 36, 48, 60));
        Assert.Equal([9, 10, 15, 17, 20, 26], Least(Discrimination.PairChance, 0.05, 10, 12, 20, 24, 30, 40));
        Assert.Equal([9, 10, 15, 18, 21, 27], Least(Discrimination.PairChance, 0.025, 10, 12, 20, 24, 30, 40));
        Assert.Null(Discrimination.LeastRight(2, Discrimination.TriangleChance, 0.05));
    }

    [Fact] // LS-55.
    public void Triangle_OfThePosedAnswers_IsAsOfR()
    {
        Assert.Equal(0.0434823, Discrimination.P(30, 15, Discrimination.TriangleChance), 7);
        Assert.Equal(1.4662628, Discrimination.TriangleDistance(0.5)!.Value, 6);
        Assert.All(new[] { (0, 0.3333333), (0.5, 0.3558347), (1, 0.4180467), (1.5, 0.5064561), (2, 0.6048069) }, d => Assert.Equal(d.Item2, Discrimination.TriangleRight(d.Item1), 1e-7));
        Assert.Equal(0, Discrimination.TriangleDistance(0.2));
        Assert.Null(Discrimination.TriangleDistance(1));
        Assert.Throws<ArgumentOutOfRangeException>(() => Discrimination.P(10, 11, 0.5));
    }

    [Fact] // LS-56, ours, computed.
    public void Ranks_OfThePosedBakers_AreAsWorked()
    {
        var test = RankTest.Of([[1, 2, 3], [1, 3, 2], [2, 1, 3], [1, 2, 3], [1, 2, 3], [2, 1, 3], [1, 3, 2], [1, 2, 3]]);
        Assert.Equal([10.0, 16, 22], test.RankSums);
        Assert.Equal((9.0, 0.0111090, 7.84), (Math.Round(test.Q, 9), Math.Round(test.P, 7), Math.Round(test.LeastDifference, 9)));
        Assert.Contains("Row 2 is no ranking", RankTest.Fault([[1, 2, 3], [1, 1, 3]])!, StringComparison.Ordinal);
        Assert.NotNull(RankTest.Fault([[1, 2]]));
    }

    [Fact] // Ours: bakers 20 apart in level; flour T 10 above the control in each pair. The baker leaves the difference alone.
    public void Trial_OfTwoBakers_TakesTheBakerOut()
    {
        TrialLoaf[] loaves = [.. new[] { ("Ada", 0.0), ("Ben", 20), ("Cid", -15) }.SelectMany(b => new[] { ("C", 0.0), ("T", 10) }.SelectMany(f => new[] { -1.0, 1 }.Select(e => new TrialLoaf(f.Item1, b.Item1, $"{b.Item1} {f.Item1}", 800 + b.Item2 + f.Item2 + e))))];
        var (trial, faults) = BakeTrial.Of(loaves, "C");
        Assert.Empty(faults);
        var contrast = Assert.Single(trial!.Contrasts);
        Assert.Equal(("T", 10.0), (contrast.Flour, Math.Round(contrast.Difference, 6)));
        Assert.InRange(trial.BakerDeviation!.Value, 17, 18.5); // Of 0, 20, −15: 17.56.
        Assert.True(contrast.StandardError < 2);
        Assert.Contains("No loaf is of the control", BakeTrial.Of(loaves, "X").Faults[0], StringComparison.Ordinal);
        Assert.Contains("Judge the pairs instead", Assert.Single(BakeTrial.Of([.. loaves.Take(4).Select((l, i) => l with { Dough = $"{i}" })], "C").Faults), StringComparison.Ordinal);
        Assert.Contains("two flours", BakeTrial.Of([.. loaves.Select(l => l with { Dough = l.Baker })], "C").Faults[0], StringComparison.Ordinal);
    }

    [Fact] // Ours: known blends 2, 4 and 6 above their linear guess; t(0.975; 2) = 4.302653.
    public void Guess_OfABlend_IsLinearPlusWhatWasLearnt()
    {
        var guess = BlendGuess.Of([(0.25, 100), (0.75, 60)], [(50, 52), (60, 64), (70, 76)]);
        Assert.Equal((70, 4, 74), (guess.Linear, guess.Residual, guess.Guess));
        Assert.Equal(4.302653 * 2 * Math.Sqrt(4.0 / 3), guess.PlusMinus!.Value, 4);
        var alone = BlendGuess.Of([(1, 5)], [(1, 2)]);
        Assert.Null(alone.PlusMinus);
        Assert.Contains("no fact", alone.Words, StringComparison.Ordinal);
        Assert.Throws<ArgumentException>(() => BlendGuess.Of([(0.5, 5)], []));
    }

    [Fact]
    public void Session_ThereAndBack_IsTheSameAndFaultsAreSaid()
    {
        Assert.Empty(Session.Faults());
        Assert.True(BakeSession.TryRead(Session.ToJson(), out var read, out _));
        Assert.Equal(Session.ToJson(), read.ToJson());
        Assert.Equal(4.0, Session.Loaves[0].SpecificVolume, 9); // 800 mL of 200 g.
        Assert.Contains("beside in the same session", Assert.Single((Session with { Control = "X" }).Faults()), StringComparison.Ordinal);
        Assert.Contains("Volume lies from", Assert.Single((Session with { Loaves = [.. Session.Loaves, new("T", "4", 5, 200)] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("two flours", Assert.Single((Session with { Loaves = [.. Session.Loaves, new("T", "1", 800, 200)] }).Faults()), StringComparison.Ordinal);
        Assert.Contains("a code", Assert.Single((Session with { Code = " " }).Faults()), StringComparison.Ordinal);
    }

    [Fact] // Ours: three sessions, T 0.2 mL/g above the control in each.
    public void Comparison_OfSessions_PairsTheirMeans()
    {
        var sessions = Enumerable.Range(0, 3).Select(i => Session with { Code = $"{i}", Baker = i == 1 ? "Ben" : "Ada", Loaves = [new("C", "1", 800 + (20 * i), 200), new("C", "1", 804 + (20 * i), 200), new("T", "2", 842 + (20 * i), 200), new("T", "2", 842 + (20 * i) + (2 * i), 200)] }).ToArray();
        var found = Assert.Single(BakeComparison.Of(sessions, "C"));
        Assert.Equal((3, 0.205), (found.Sessions, Math.Round(found.Pairs!.Mean, 6))); // 0.200, 0.205, 0.210.
        Assert.Equal(0.205, found.OverBakers!.Difference, 3);
        Assert.Null(Assert.Single(BakeComparison.Of(sessions[..1], "C")).Pairs);
        Assert.Empty(BakeComparison.Of([], "C"));
    }

    private static BakeSession Session { get; } = new("2026-01-12 A", NodaTime.Instant.FromUtc(2026, 1, 12, 15, 0), "Ada", "C", [new("C", "1", 800, 200), new("T", "2", 820, 200, 7)], [new("C", "F-WB"), new("T", "F-HG")]);

    [Fact] // Bounds are ours: a fifth of the time and two minutes, three degrees in a dough, fifteen in an oven.
    public void Step_FarFromTheFormula_IsAskedAbout()
    {
        Assert.Empty(new BakedStep("proof", 60, 37, 55, 35).Questions());
        Assert.Contains("took 70 min, the formula asks 55", Assert.Single(new BakedStep("proof", 70, 35, 55, 35).Questions()), StringComparison.Ordinal);
        Assert.Contains("mix at 29.5 °C", Assert.Single(new BakedStep("mix", 6.5, 29.5, 5, 26).Questions()), StringComparison.Ordinal);
        Assert.Empty(new BakedStep("bake", 25, 210, 25, 220).Questions());
        Assert.Single(new BakedStep("bake", 25, 190, 25, 220).Questions());
        Assert.Empty(new BakedStep("rest", 30, 25).Questions());
        Assert.Contains("Is it in °C?", Assert.Single(new BakedStep("bake", 25, 430).Faults()), StringComparison.Ordinal);
        Assert.Equal(2, new BakedStep(" ", -1).Faults().Count);
        Assert.Contains("are volume and weight right?", Assert.Single(new BakedLoaf("C", "1", 200, 845).Questions()), StringComparison.Ordinal);
    }

    [Fact] // LS-56 as orders of breads: the same ranks, and Friedman's figures computed with R.
    public void Rankings_AsOrders_GiveTheRanksOfThePosedRows()
    {
        string[] breads = ["a", "b", "c"];
        TasterRanking[] rankings = [.. new[] { "abc", "acb", "bac", "abc", "abc", "bac", "acb", "abc" }.Select((order, i) => new TasterRanking($"t{i}", [.. order.Select(b => (IReadOnlyList<string>)[$"{b}"])]))];
        Assert.Equal([2, 1, 3], rankings[2].RanksOf(breads));
        var judged = TasterRanking.Judged(rankings, breads)!;
        Assert.Equal([10, 16, 22], judged.RankSums);
        Assert.Equal((9.0, 0.0111090), (Math.Round(judged.Q, 9), Math.Round(judged.P, 7)));
        Assert.Equal([1.5, 1.5, 3], new TasterRanking("t", [["a", "b"], ["c"]]).RanksOf(breads)); // Ties share the mean of their ranks.
        Assert.Null(TasterRanking.Judged([rankings[0]], breads));
        Assert.Equal(["t ranked x, of which there is no loaf.", "t did not rank c: rank every flour of the bake.", "t ranked a twice."], new TasterRanking("t", [["a", "b"], ["a", "x"]]).Faults(breads));
    }

    [Fact] // First bytes of the formats: ISO/IEC 10918-1, the PNG specification, the WebP container.
    public void Picture_IsKnownByItsContent()
    {
        byte[] Padded(byte[] head, byte[] tail) => [.. head, .. new byte[40], .. tail];
        var png = Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==");
        byte[] jpeg = Padded([0xFF, 0xD8, 0xFF, 0xE0], [0xFF, 0xD9]), webp = Padded([.. "RIFF"u8, 44, 0, 0, 0, .. "WEBPVP8 "u8], []);
        Assert.Equal(["image/png", "image/jpeg", "image/webp"], new[] { png, jpeg, webp }.Select(b => PictureFile.TypeOf(b)));
        Assert.All(new[] { png[..^12], jpeg[..^2], webp[..40], [.. "<svg xmlns='http://www.w3.org/2000/svg'><script/></svg>"u8], Padded([.. "GIF89a"u8], [0x3B]), Padded([.. "%PDF-1.7"u8], []) }, b =>
        {
            Assert.Null(PictureFile.TypeOf(b));
            Assert.Contains("no whole JPEG, PNG or WebP", PictureFile.Fault(b), StringComparison.Ordinal);
        });
        Assert.Contains("at most 5 MiB", PictureFile.Fault(new byte[PictureFile.MostBytes + 1]), StringComparison.Ordinal);
        Assert.Contains("No picture was sent", PictureFile.Fault([]), StringComparison.Ordinal);
        Assert.Null(PictureFile.Fault(png));
        Assert.Equal("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855", BakePhotograph.HashOf([])); // FIPS 180-4: of nothing.
    }

    [Fact]
    public void Blend_OfTwoFlours_IsReadBackAndRefusedInWords()
    {
        var blend = new MeasuredBlend("b1", MeasuredBlend.Properties[0], [new("WB", 0.75, 61.5), new("HG", 0.25, 64)], 62.4);
        Assert.Equal(62.125, blend.Linear, 12);
        Assert.True(MeasuredBlend.TryRead(blend.ToJson(), out var read, out _));
        Assert.Equal(blend.ToJson(), read.ToJson());
        Assert.Equal(
            ["“falling number, s” is no dough property", "A blend has 2 to 12 flours; read 1.", "WB: a share lies above 0 and below 100 %; read 120.", "Shares sum to 100 %; these sum to 120 %."],
            new MeasuredBlend("b", "falling number, s", [new("WB", 1.2, 300)], 300).Faults().Select(f => f.StartsWith('“') ? f[..f.IndexOf(" that", StringComparison.Ordinal)] : f));
    }
}
