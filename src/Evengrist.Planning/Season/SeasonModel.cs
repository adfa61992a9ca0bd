using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>The linear problem of a season and where everything stands in it; −1 where there is no column or row.</summary>
internal sealed class SeasonModel
{
    public SeasonModel(SeasonSpec spec, LayerDraws draws)
    {
        (Spec, Draws) = (spec, draws);
        Wheats = [.. spec.AllWheats];
        Sides = [.. spec.Flours.Select(f => LimitSide.Of(f).ToArray())];
        var (k, f, t) = (Wheats.Length, spec.Flours.Count, spec.Periods.Count);
        (Use, Stock, WheatRow) = (Filled(k, f, t), Filled(k, t), Filled(k, t));
        (Unmet, FlourStock, FlourRow) = (Filled(f, t), Filled(f, t), Filled(f, t));
        HoursRow = Filled(spec.Units.Count, t);
        HomeRow = Filled(spec.Homes.Count, t);
        Buy = [.. spec.Offers.Select(o => Filled(o.Tiers.Count, t))];
        Total = [.. spec.Offers.Select(_ => -1)];
        Chosen = [.. spec.Choices.Where(c => c.Least > 0).Select(c => c switch
        {
            UseChoice use => (use.Wheat, use.Flour, use.Period),
            ShareChoice share => (share.Wheat, share.Flour, share.Period),
            _ => (Wheat: "", Flour: "", Period: -1),
        }).Where(c => c.Period >= 0).Select(c => (Array.FindIndex(Wheats, w => w.Code == c.Wheat), spec.Flours.TakeWhile(x => x.Code != c.Flour).Count(), c.Period))];
        CarryOutRow = [.. spec.CarryOut.Select(_ => -1)];
    }

    public SeasonSpec Spec { get; }

    public LayerDraws Draws { get; }

    public LinearProblem Problem { get; } = new();

    public SeasonWheat[] Wheats { get; }

    public LimitSide[][] Sides { get; }

    /// <summary>t of wheat k into flour f in period t.</summary>
    public int[,,] Use { get; }

    public int[,] Stock { get; }

    public int[,] Unmet { get; }

    public int[,] FlourStock { get; }

    /// <summary>By offer: tier, period.</summary>
    public int[][,] Buy { get; }

    public int[,] WheatRow { get; }

    public int[,] FlourRow { get; }

    public int[,] HoursRow { get; }

    public int[,] HomeRow { get; }

    public int[] Total { get; }

    public int[] CarryOutRow { get; }

    public List<LimitRow> Limits { get; } = [];

    /// <summary>Demands that cannot be bought off, with the columns by which each would yield; filled only where a clash is looked for.</summary>
    public List<HardDemand> Hard { get; } = [];

    /// <summary>Wheat, flour and period where a person has said how much at the least.</summary>
    public HashSet<(int Wheat, int Flour, int Period)> Chosen { get; }

    public int UnitOf(int flour)
    {
        for (var u = 0; ; u++)
        {
            if (Spec.Units[u].Code == Spec.Flours[flour].Unit)
            {
                return u;
            }
        }
    }

    private static int[,] Filled(int a, int b)
    {
        var made = new int[a, b];
        for (var i = 0; i < a; i++)
        {
            for (var j = 0; j < b; j++)
            {
                made[i, j] = -1;
            }
        }

        return made;
    }

    private static int[,,] Filled(int a, int b, int c)
    {
        var made = new int[a, b, c];
        for (var i = 0; i < a; i++)
        {
            for (var j = 0; j < b; j++)
            {
                for (var l = 0; l < c; l++)
                {
                    made[i, j, l] = -1;
                }
            }
        }

        return made;
    }
}

/// <summary>The row of a limit of a flour in a period, its miss and its relief; a column is −1 where it cannot be needed.</summary>
internal sealed record LimitRow(int Flour, int Period, LimitSide Side, int Row, int Miss, IReadOnlyList<int> Relief, IReadOnlyList<int> Caps);

/// <summary>A demand that has to be kept, in words, and the columns by which it would yield.</summary>
internal sealed record HardDemand(string Words, string Unit, List<int> Slack);
