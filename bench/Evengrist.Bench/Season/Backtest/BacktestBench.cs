using System.Globalization;

namespace Evengrist.Bench.Season.Backtest;

/// <summary>Simulated crop years under the habit and under the year's value, beside a year in which all was known: docs/model/season.md.</summary>
internal static class BacktestBench
{
    public static int Run(string[] args)
    {
        var years = 20;
        if (args is not [] && !(args is [var y] && int.TryParse(y, NumberStyles.None, CultureInfo.InvariantCulture, out years) && years > 0))
        {
            Console.Error.WriteLine("usage: backtest [YEARS]");
            return 2;
        }

        (string Name, Func<SimulatedYear, YearCost> Cost)[] rules =
        [
            ("nearest bin; today's least cost", y => YearRun.Of(y, new NearestBin(y, 1), planned: false)),
            ("nearest bin; year planned", y => YearRun.Of(y, new NearestBin(y, 1), planned: true)),
            ("three heaps by protein; today's least cost", y => YearRun.Of(y, new NearestBin(y, 3), planned: false)),
            ("three heaps by protein; year planned", y => YearRun.Of(y, new NearestBin(y, 3), planned: true)),
            ("bands of the year's worth; year planned", y => YearRun.Of(y, new YearValueBin(y, double.PositiveInfinity), planned: true)),
            ("every truck by its worth alone; year planned", y => YearRun.Of(y, new YearValueBin(y, 1), planned: true)),
            ("all known", YearRun.Foreseen),
        ];
        Console.WriteLine("Cost of the year over that with all known\n\n| year | " + string.Join(" | ", rules.Select(r => r.Name)) + " |\n|---:|" + string.Concat(rules.Select(_ => "---:|")));
        var rows = new List<YearCost[]>();
        for (var seed = 1; seed <= years; seed++)
        {
            var year = new SimulatedYear(seed);
            YearCost[] row = new YearCost[rules.Length];
            Parallel.For(0, rules.Length, r => row[r] = rules[r].Cost(year));
            rows.Add(row);
            Say(seed.ToString(CultureInfo.InvariantCulture), row.Select(c => Share(c.Total / row[^1].Total)));
        }

        Figures("mean", rows, row => [.. row.Select(c => c.Total / row[^1].Total)], Share);
        Figures("off-spec wheat mix, t", rows, row => [.. row.Select(c => c.OffTonnes)], One);
        Figures("flour not made, t", rows, row => [.. row.Select(c => c.UnmetTonnes)], One);
        Figures("misses and unmet, 1000 USD", rows, row => [.. row.Select(c => (c.Misses + c.Unmet) / 1000)], One);
        Figures("bought, 1000 USD", rows, row => [.. row.Select(c => c.Bought / 1000)], One);
        Figures("whole cost, 1000 USD", rows, row => [.. row.Select(c => c.Total / 1000)], One);
        return 0;
    }

    private static void Figures(string name, List<YearCost[]> rows, Func<YearCost[], double[]> of, Func<double, string> say)
    {
        var all = rows.ConvertAll(r => of(r));
        Say(name, Enumerable.Range(0, all[0].Length).Select(i => say(all.Average(a => a[i]))));
    }

    private static void Say(string name, IEnumerable<string> cells) => Console.WriteLine($"| {name} | {string.Join(" | ", cells)} |");

    private static string Share(double ratio) => ratio.ToString("0.0000", CultureInfo.InvariantCulture);

    private static string One(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);
}
