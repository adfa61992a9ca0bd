using Evengrist.Planning.Season.Bands;
using Evengrist.Season;
using Evengrist.Season.Bands;

namespace Evengrist.Planning.Tests.Season.Bands;

public sealed class BandBinningTests
{
    private static BandRow Row(params double[] most) => new(
        new BandDesign([.. most.Select((t, i) => new HarvestBand(10 + i, 11 + i, 0, double.PositiveInfinity, t, 12, Years.Protein(10.5 + i), 0))], 0), 0, 0, most, null);

    private static SeasonHome[] Bins(params double[] rooms) => [.. rooms.Select((r, i) => new SeasonHome($"B{i + 1}", r))];

    [Fact]
    public void Share_EveryWayTriedByHand_FindsNoLessWithoutRoom()
    {
        // Three bands over six unlike bins: 3⁶ ways, each tried.
        double[] most = [900, 1500, 400], rooms = [700, 650, 500, 450, 300, 150];
        var least = double.PositiveInfinity;
        for (var way = 0; way < 729; way++)
        {
            var (held, code) = (new double[3], way);
            foreach (var room in rooms)
            {
                held[code % 3] += room;
                code /= 3;
            }

            least = Math.Min(least, held.All(h => h > 0) ? most.Zip(held, (m, h) => Math.Max(0, m - h)).Sum() : double.PositiveInfinity);
        }

        var shares = BandBinning.Share(Row(most), Bins(rooms))!;
        Assert.Equal(least, shares.Sum(s => s.ShortTonnes), 6);
        Assert.Equal(shares.Sum(s => s.Bins.Count), shares.SelectMany(s => s.Bins).Distinct().Count());
    }

    [Fact]
    public void Share_RoomAndToSpare_TakesAsFewBinsAsWillDo()
    {
        var shares = BandBinning.Share(Row(900, 400), Bins(1000, 500, 500, 500, 500))!;
        Assert.Equal(["B1"], shares[0].Bins);
        Assert.Single(shares[1].Bins);
        Assert.All(shares, s => Assert.Equal(0, s.ShortTonnes));
    }

    [Fact]
    public void Share_TooLittleRoom_LeavesNoBandMuchWorseOffThanAnother()
    {
        // 2,000 t and 1,000 t over three bins of 600 t: 1,200 t are short whichever way; two bins to the large band leave 40 % of each without room [derived].
        var shares = BandBinning.Share(Row(2000, 1000), Bins(600, 600, 600))!;
        Assert.Equal((2, 1), (shares[0].Bins.Count, shares[1].Bins.Count));
        Assert.All(shares, s => Assert.Equal(0.4, s.ShortTonnes / s.MostTonnes, 9));
    }

    [Fact]
    public void Share_FewerBinsThanBands_HasNoAnswer() => Assert.Null(BandBinning.Share(Row(10, 10), Bins(1000)));
}
