using Evengrist.Packing.Runs;

namespace Evengrist.Planning.Tests.Packing;

/// <summary>Cases of packing runs.</summary>
internal static class RunCases
{
    public static readonly IReadOnlyDictionary<string, IReadOnlyList<string>> Soy = new Dictionary<string, IReadOnlyList<string>> { ["SM"] = ["soy"] };

    /// <summary>One line, five flours, the rules of a working day [practice of the demonstration mill].</summary>
    public static RunOrderSpec OneLine(params PackingRun[] more) => new(
        [Run("Bread", 6, 10), Run("AP", 5, 14), Run("HG", 4, 20), Run("WW", 3, 24), Run("SM", 2, 24), .. more],
        [new("L1")],
        [
            new("SM", null, 240) { FlushTonnes = 0.2, FlushTo = "waste", IsCleanDown = true }, new("WW", null, 90), new(null, "SM", 30),
            new("Bread", "AP", 20) { EitherWay = true }, new("Bread", "HG", 20) { EitherWay = true }, new(null, null, 30),
        ])
    {
        Allergens = Soy,
    };

    public static PackingRun Run(string flour, double hours, double due, string? code = null, string line = "L1") =>
        new(code ?? flour, flour, 10 * hours, (int)(due * 60), [new(line, (int)(hours * 60))]);

    /// <summary>The least cost over every order on one line, each run as early as it can; for few runs.</summary>
    public static double Least(RunOrderSpec spec)
    {
        var least = double.PositiveInfinity;
        Try([], 0, spec.Lines[0].LastFlour, spec.Lines[0].FreeFrom);
        return least;

        void Try(List<RunLock> places, int taken, string? last, int free)
        {
            if (places.Count == spec.Runs.Count)
            {
                least = Math.Min(least, RunPlan.Of(spec, [.. places.OrderBy(p => p.Line, StringComparer.Ordinal).Select(p => new RunLock("L1", p.Start))]).Cost);
                return;
            }

            for (var r = 0; r < spec.Runs.Count; r++)
            {
                var run = spec.Runs[r];
                if ((taken & (1 << r)) == 0 && spec.MayFollow(last, run.Flour))
                {
                    var start = Math.Max(run.Ready, free + spec.Between(last, run.Flour).Minutes);
                    Try([.. places, new($"{r:00}", start)], taken | (1 << r), run.Flour, start + run.Places[0].Minutes);
                }
            }
        }
    }
}
