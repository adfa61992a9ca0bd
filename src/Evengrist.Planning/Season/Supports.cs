using Evengrist.Planning.Solving;


namespace Evengrist.Planning.Season;

/// <summary>Which wheats every flour may draw in every period, and where that is still open.</summary>
internal sealed class Supports
{
    private readonly bool[,,] may;
    private readonly bool[,] open;
    private readonly bool[,] campaignOpen;

    private Supports(bool[,,] may, bool[,] open, bool[,] campaignOpen) => (this.may, this.open, this.campaignOpen) = (may, open, campaignOpen);

    public bool this[int wheat, int flour, int period] => may[wheat, flour, period];

    public bool IsOpen(int flour, int period) => open[flour, period];

    public bool IsCampaignOpen(int flour, int period) => campaignOpen[flour, period];

    /// <summary>Everything is open.</summary>
    public static Supports All(SeasonModel model)
    {
        var made = Empty(model);
        Each(model, (f, t) =>
        {
            made.open[f, t] = made.campaignOpen[f, t] = true;
            for (var k = 0; k < model.Wheats.Length; k++)
            {
                made.may[k, f, t] = model.Use[k, f, t] >= 0;
            }
        });
        return made;
    }

    /// <summary>Flour-weeks that keep the rules already are settled; elsewhere only wheats that an answer touches may be drawn.</summary>
    /// <param name="model">The linear problem.</param>
    /// <param name="values">Its answer.</param>
    /// <param name="also">Wheats that may be drawn besides; null for none.</param>
    public static Supports Touched(SeasonModel model, IReadOnlyList<double> values, Supports? also = null)
    {
        var made = Empty(model);
        Each(model, (f, t) =>
        {
            var drawn = Drawn(model, values, f, t);
            var (fits, campaign) = Fits(model, f, drawn);
            made.open[f, t] = !fits;
            made.campaignOpen[f, t] = !campaign;
            foreach (var (k, _) in drawn)
            {
                made.may[k, f, t] = true;
            }

            for (var k = 0; also is not null && !fits && k < model.Wheats.Length; k++)
            {
                made.may[k, f, t] |= also[k, f, t];
            }
        });
        return made;
    }

    /// <summary>The wheats that would cost least to draw where an answer does not draw them.</summary>
    /// <param name="model">The linear problem.</param>
    /// <param name="answer">Its answer, with what each column would cost.</param>
    /// <param name="most">How many for each flour and period.</param>
    public static Supports Near(SeasonModel model, LinearAnswer answer, int most)
    {
        var made = Empty(model);
        Each(model, (f, t) =>
        {
            var near = Enumerable.Range(0, model.Wheats.Length).Where(k => model.Use[k, f, t] is >= 0 and var x && answer.Values[x] <= 1e-6).OrderBy(k => answer.ReducedCosts[model.Use[k, f, t]]).Take(most);
            foreach (var k in near)
            {
                made.may[k, f, t] = true;
            }
        });
        return made;
    }

    /// <summary>This one, with a span of periods open to what another one allows besides.</summary>
    public Supports Open(SeasonModel model, int from, int to, Supports also)
    {
        var made = new Supports((bool[,,])may.Clone(), (bool[,])open.Clone(), (bool[,])campaignOpen.Clone());
        Each(model, (f, t) =>
        {
            if (t >= from && t < to)
            {
                made.open[f, t] = made.campaignOpen[f, t] = true;
                for (var k = 0; k < model.Wheats.Length; k++)
                {
                    made.may[k, f, t] |= also[k, f, t];
                }
            }
        });
        return made;
    }

    /// <summary>Everything is settled: the wheats with most tonnes, as many as there are gates, without those below the least share.</summary>
    public static Supports Dropped(SeasonModel model, IReadOnlyList<double> values)
    {
        var made = Empty(model);
        Each(model, (f, t) =>
        {
            var flour = model.Spec.Flours[f];
            var drawn = Drawn(model, values, f, t).OrderByDescending(d => model.Chosen.Contains((d.Wheat, f, t))).ThenByDescending(d => d.Tonnes).Take(flour.MostGates ?? int.MaxValue).ToList();
            var unit = model.Spec.Units[model.UnitOf(f)];
            if (unit.LeastCampaignHours is { } least && drawn.Sum(d => d.Tonnes) < least * unit.TonnesPerHour / 2)
            {
                drawn.Clear();
            }

            while (drawn.Count > 1 && drawn[^1].Tonnes < flour.LeastShare * 0.5 * drawn.Sum(d => d.Tonnes))
            {
                drawn.RemoveAt(drawn.Count - 1);
            }

            drawn.ForEach(d => made.may[d.Wheat, f, t] = true);
        });
        return made;
    }

    /// <summary>Everything is settled as an answer draws it, to a thousandth of the least share.</summary>
    public static Supports Settled(SeasonModel model, IReadOnlyList<double> values)
    {
        var made = Empty(model);
        Each(model, (f, t) =>
        {
            var drawn = Drawn(model, values, f, t);
            var all = drawn.Sum(d => d.Tonnes);
            foreach (var (k, _) in drawn.Where(d => d.Tonnes > Math.Max(1e-6, model.Spec.Flours[f].LeastShare * 0.5) * all))
            {
                made.may[k, f, t] = true;
            }
        });
        return made;
    }

    /// <summary>Everything is settled as given; a flour and period without wheats is not milled.</summary>
    /// <param name="model">The linear problem.</param>
    /// <param name="drawn">The wheats drawn, by flour and period.</param>
    /// <param name="isFree">Whether a flour may draw all wheats.</param>
    public static Supports Given(SeasonModel model, IReadOnlyDictionary<(int Flour, int Period), int[]> drawn, Func<int, bool> isFree)
    {
        var made = Empty(model);
        Each(model, (f, t) =>
        {
            IEnumerable<int> wheats = isFree(f) ? Enumerable.Range(0, model.Wheats.Length) : drawn.GetValueOrDefault((f, t), []);
            foreach (var k in wheats.Where(k => model.Use[k, f, t] >= 0))
            {
                made.may[k, f, t] = true;
            }
        });
        return made;
    }

    public int CountOpen()
    {
        var count = 0;
        foreach (var one in open)
        {
            count += one ? 1 : 0;
        }

        return count;
    }

    public static List<(int Wheat, double Tonnes)> Drawn(SeasonModel model, IReadOnlyList<double> values, int f, int t)
    {
        var drawn = new List<(int, double)>();
        for (var k = 0; k < model.Wheats.Length; k++)
        {
            if (model.Use[k, f, t] is >= 0 and var x && values[x] > 1e-6)
            {
                drawn.Add((k, values[x]));
            }
        }

        return drawn;
    }

    private static (bool Fits, bool Campaign) Fits(SeasonModel model, int f, List<(int Wheat, double Tonnes)> drawn)
    {
        var (flour, unit, all) = (model.Spec.Flours[f], model.Spec.Units[model.UnitOf(f)], drawn.Sum(d => d.Tonnes));
        return (drawn.Count <= (flour.MostGates ?? int.MaxValue) && drawn.TrueForAll(d => d.Tonnes >= flour.LeastShare * all * (1 - 1e-9)),
            all == 0 || unit.LeastCampaignHours is not > 0 || all >= unit.LeastCampaignHours * unit.TonnesPerHour);
    }

    private static Supports Empty(SeasonModel model)
    {
        var (k, f, t) = (model.Wheats.Length, model.Spec.Flours.Count, model.Spec.Periods.Count);
        return new Supports(new bool[k, f, t], new bool[f, t], new bool[f, t]);
    }

    private static void Each(SeasonModel model, Action<int, int> each)
    {
        for (var f = 0; f < model.Spec.Flours.Count; f++)
        {
            for (var t = 0; t < model.Spec.Periods.Count; t++)
            {
                each(f, t);
            }
        }
    }
}
