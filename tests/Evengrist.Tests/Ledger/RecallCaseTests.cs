using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Ledger;

/// <summary>One suspect truck in bin B14, drawn to a tempering bin and a mill: the arithmetic of a stirred tank fed by a pulse.</summary>
public sealed class RecallCaseTests
{
    [Fact]
    public void FirstInFirstOut_PalletsAndPeak()
    {
        var mill = RecallCase.Posed();
        var pallets = mill.Book.OfKind(PlaceKind.Pallet).Count();
        var reckoning = mill.Reckon(Outflow.FirstInFirstOut);
        var kilograms = SuspectKilograms(mill, reckoning, pallets);

        // 0.4·(1 − e^(−26.34/7/3.4286)) = 26.65 % at the moment the pulse ends, in the stirred stage; a pallet is the mean of
        // five minutes and so stays a little below. Counts and 18.17 t = 26.34 t × 0.69: worked out by hand from the same tank.
        Assert.Equal(0.2665, PeakIn(mill, reckoning, "TA"), 0.0002);
        Assert.InRange(kilograms.Max(), 260, 266.5);
        Assert.InRange(kilograms.Count(k => k > 50), 108, 110);
        Assert.InRange(kilograms.Count(k => k > 10), 179, 181);
        Assert.InRange(kilograms.Count(k => k > 1), 276, 278);
        Assert.Equal(18.17, kilograms.Sum() / 1000, 0.05);
        Assert.Equal(0.878, kilograms.Where(k => k > 50).Sum() / kilograms.Sum(), 0.002);
        Assert.Equal(0.998, kilograms.Where(k => k > 1).Sum() / kilograms.Sum(), 0.001);
    }

    [Fact]
    public void EachHypothesis_TheSuspectLeavesTheBinWhenItShould()
    {
        // Hours after the first draw: plug 58.86–62.62, core (top first) 42.86–46.62; stirred 3.57 % of every tonne.
        foreach (var (outflow, first, last) in new[] { (Outflow.FirstInFirstOut, 58.86, 62.62), (Outflow.CoreFirst, 42.86, 46.62) })
        {
            var mill = RecallCase.Posed();
            var suspect = mill.Id("SUSPECT");
            Assert.Equal(0, Share(first - 0.05), 9);
            Assert.Equal(1, Share(first + 0.05), 9);
            Assert.Equal(1, Share(last - 0.05), 9);
            Assert.Equal(0, Share(last + 0.05), 9);

            double Share(double hour)
            {
                var mark = new Mark(mill.Id("B14"), PosedMill.Hour(hour), PosedMill.Hour(hour + 0.005));
                var marked = mill.Reckon(outflow, mark);
                return marked.Marked.Sum(m => m.Grams * mill.OriginsOf(marked, m.Parcel).GetValueOrDefault("SUSPECT")) / marked.Marked.Sum(m => m.Grams);
            }

            Assert.NotEqual(default, suspect);
        }

        var stirred = RecallCase.Posed();
        var next = stirred.Reckon(Outflow.Stirred).At(PosedMill.Hour(30)).NextOut(stirred.Id("B14"), Mass.FromTonnes(1));
        var reckoning = stirred.Reckon(Outflow.Stirred);
        Assert.Equal(0.0357, next.Sum(l => l.Grams * stirred.OriginsOf(reckoning, l.Parcel).GetValueOrDefault("SUSPECT")) / 1e6, 0.00005);
    }

    [Fact]
    public void CatchUp_LateFact_SameAsReckonedFromTheStart()
    {
        var mill = RecallCase.Posed();
        foreach (var outflow in Enum.GetValues<Outflow>())
        {
            var following = mill.Reckon(outflow);
            mill.Move("OTHERS", "B14", 5, 3);
            following.CatchUp();
            var anew = mill.Reckon(outflow);
            Assert.Equal(anew.Parcels.Count, following.Parcels.Count);
            for (var i = 0; i < anew.Parcels.Count; i++)
            {
                Assert.True(anew.Parcels.Rows.ParentsOf(i).SequenceEqual(following.Parcels.Rows.ParentsOf(i)));
                Assert.True(anew.Parcels.Rows.SharesOf(i).SequenceEqual(following.Parcels.Rows.SharesOf(i)));
            }
        }
    }

    private static double[] SuspectKilograms(PosedMill mill, Reckoning reckoning, int pallets)
    {
        var share = SuspectShares(mill, reckoning);
        return Enumerable.Range(1, pallets).Select(n => reckoning.LoadOf(mill.Book.MovementsOf(mill.Id($"P{n}")).First())!.Value)
            .Select(p => 1000 * share[p]).ToArray();
    }

    private static double PeakIn(PosedMill mill, Reckoning reckoning, string place)
    {
        var share = SuspectShares(mill, reckoning);
        return Enumerable.Range(0, share.Length).Where(i => reckoning.Parcels.PlaceOf(i) == mill.Id(place)).Max(i => share[i]);
    }

    private static double[] SuspectShares(PosedMill mill, Reckoning reckoning)
    {
        var rows = reckoning.Parcels.Rows;
        var share = new double[rows.Count];
        for (var i = 0; i < rows.Count; i++)
        {
            share[i] = rows.ParentsOf(i).IsEmpty && mill.Book[reckoning.Parcels.PlaceOf(i)].Code == "SUSPECT" ? 1 : 0;
            for (var j = 0; j < rows.ParentsOf(i).Length; j++)
            {
                share[i] += rows.SharesOf(i)[j] * share[rows.ParentsOf(i)[j]];
            }
        }

        return share;
    }
}
