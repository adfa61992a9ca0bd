using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Tests.Ledger;

/// <summary>
/// The worked trace of docs/model/genealogy.md. Source: style report 7.6 ("Worked trace, ideal mixing"), derived there:
/// T1 25 t and T2 24 t into one fill, T3 40 t into the next; 30 t and 20 t drawn; 2 071 006 g of water; a bag of 25 kg.
/// </summary>
public class GenealogyWorkedTests
{
    private const int T1 = 0, T2 = 1, T3 = 2, Water = 3, Grist = 6, Bag = 9;

    [Fact]
    public void Back_BagWithWater_GivesTheWorkedShares()
    {
        var sweep = new Sweep(Worked());
        sweep.Back(Bag);
        Assert.Equal([Water, T3, T2, T1], sweep.Origins.ToArray());
        Assert.Equal(0.039773, sweep.ShareOf(Water), 5e-7);
        Assert.Equal(0.960227, sweep.ShareOf(T1) + sweep.ShareOf(T2) + sweep.ShareOf(T3), 5e-7);
    }

    [Fact]
    public void Back_WheatOnly_GivesTheWorkedShares()
    {
        var sweep = new Sweep(Worked());
        sweep.Back(Grist);
        Assert.Equal(0.306122, sweep.ShareOf(T1), 5e-7);
        Assert.Equal(0.293878, sweep.ShareOf(T2), 5e-7);
        Assert.Equal(0.400000, sweep.ShareOf(T3), 5e-7);
    }

    [Fact]
    public void Back_BagByWheatAlone_SplitsInWholeGrams()
    {
        var sweep = new Sweep(Worked());
        sweep.Back(Bag);
        double[] shares = [sweep.ShareOf(T1), sweep.ShareOf(T2), sweep.ShareOf(T3)];
        var grams = Mass.FromGrams(25_000).Split(shares).Select(part => part.Grams);
        Assert.Equal([7653L, 7347L, 10_000L], grams);
    }

    [Fact]
    public void Forward_FirstTruck_GivesTheWorkedShares()
    {
        var rows = Worked();
        var sweep = new Sweep(rows, new ForwardRows(rows));
        sweep.Forward(T1);
        Assert.Equal(25.0 / 49, sweep.ShareOf(4), 1e-15);
        Assert.Equal(0.306122, sweep.ShareOf(Grist), 5e-7);
        Assert.Equal(0.306122, sweep.ShareOf(Bag) / 0.960227, 1e-6);
    }

    private static ParentRows Worked()
    {
        var rows = new ParentRows();
        rows.Add([], []);
        rows.Add([], []);
        rows.Add([], []);
        rows.Add([], []);
        var first = rows.Add([T1, T2], [25.0 / 49, 24.0 / 49]);
        var second = rows.Add([T3], [1.0]);
        var grist = rows.Add([first, second], [0.6, 0.4]);
        var damp = rows.Add([grist, Water], [50_000_000 / 52_071_006.0, 2_071_006 / 52_071_006.0]);
        var flour = rows.Add([damp], [1.0]);
        rows.Add([flour], [1.0]);
        return rows;
    }
}
