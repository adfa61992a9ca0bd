using CsCheck;
using Evengrist.Milling.Sheet;

namespace Evengrist.Tests.Milling.Sheet;

/// <summary>Words, size and loops of a flow sheet.</summary>
public sealed class FlowSheetTests
{
    [Fact]
    public void Outlet_OfEachPassage_IsNamedInTheOrderOfOutlets()
    {
        var sheet = Read();
        Assert.Equal(["what the air lifts", "throughs of 400 µm", "throughs of 600 µm", "the rest"], sheet.Passages[3].Outlets.Select((_, i) => sheet.Passages[3].Outlet(i)));
        Assert.Equal(["overs of 1000 µm", "overs of 300 µm", "throughs of 132 µm", "the rest"], sheet.Passages[0].Outlets.Select((_, i) => sheet.Passages[0].Outlet(i)));
        Assert.Throws<ArgumentOutOfRangeException>(() => sheet.Passages[0].Outlet(4));
        Assert.Throws<ArgumentOutOfRangeException>(() => sheet.Passages[3].Outlet(-1));
    }

    [Fact]
    public void Size_OfTheSmallSheet_IsAddedUpByHand()
    {
        var size = FlowSheetSize.Of(Read());
        Assert.Equal((6, 2500, 1000, 2), (size.Passages, size.RollMillimetres, size.BreakMillimetres, size.PurifierSquareMetres));
        Assert.Equal(26, size.SifterSquareMetres); // 6 and four times the 5 that stand where nothing is said.
        Assert.Equal(12.5, size.RollMillimetresPer100Kilograms); // 2500 mm for 20 t, which are 200 times 100 kg.
        Assert.Null(FlowSheetSize.Of(Read() with { TonnesPerDay = null }).RollMillimetresPer100Kilograms);
    }

    // 10.5 mm for each 100 kg in 24 h at 100 t in 24 h are 10.5 m of rolls [common practice].
    [Fact]
    public void Size_OfACommonMill_IsTheCommonLength() => Assert.Equal(10.5, new FlowSheetSize(1, 10_500, 0, 0, 0, 100).RollMillimetresPer100Kilograms);

    [Fact]
    public void Loops_OfTheSmallSheet_AreTheOneThatGoesRound() => Assert.Equal(["S1 M1 P1"], Read().Loops().Select(l => string.Join(' ', l)));

    [Fact]
    public void Loops_OfAPassageThatFeedsItself_IsThatPassage()
    {
        var sheet = Read();
        var fed = sheet.Passages[4] with { Rest = [new Spout("bran", 0.5), new Spout("F1", 0.5)] };
        Assert.Contains("F1", (sheet with { Passages = [.. sheet.Passages.Take(4), fed, sheet.Passages[5]] }).Loops().Select(l => string.Join(' ', l)));
    }

    // Beside the code: two passages share a loop where a matrix of ways, squared until it rests, joins them both ways.
    [Fact]
    public void Loops_OfAnySheet_AreThoseOfTheClosedMatrixOfWays() => Gen.Select(Gen.Int[2, 8], Gen.Int[0, int.MaxValue]).Sample((count, seed) =>
    {
        var random = new Random(seed);
        var passages = Enumerable.Range(0, count).Select(i => new Passage($"G{i}", PassageKind.Grading, [], [.. Enumerable.Range(0, count).Where(_ => random.NextDouble() < 0.25).Select(to => new Spout($"G{to}")), new Spout("out")])).ToArray();
        var sheet = new FlowSheet("any", "G0", passages, [new MillProduct("out", ProductKind.Flour)]);
        var way = new bool[count, count];
        foreach (var (from, _, spout) in sheet.Ways.Where(w => w.Spout.To != "out"))
        {
            way[from.Code[1] - '0', spout.To[1] - '0'] = true;
        }

        for (var k = 0; k < count; k++)
        {
            for (var i = 0; i < count; i++)
            {
                for (var j = 0; j < count; j++)
                {
                    way[i, j] |= way[i, k] && way[k, j];
                }
            }
        }

        var loops = sheet.Loops();
        var loopOf = loops.SelectMany((l, n) => l.Select(code => (code, n))).ToDictionary(p => p.code, p => p.n);
        for (var i = 0; i < count; i++)
        {
            Assert.Equal(way[i, i], loopOf.ContainsKey($"G{i}"));
            for (var j = 0; j < count; j++)
            {
                Assert.Equal(way[i, j] && way[j, i], loopOf.TryGetValue($"G{i}", out var a) && loopOf.TryGetValue($"G{j}", out var b) && a == b);
            }
        }
    });

    private static FlowSheet Read()
    {
        Assert.True(FlowSheetJson.TryRead(Small.Json, out var sheet, out var faults), string.Join(" ", faults));
        return sheet;
    }
}
