using System.Globalization;

namespace Evengrist.Bench.Genealogy;

/// <summary>Prints the engines side by side as a Markdown table, ratios to the first.</summary>
internal static class ResultTable
{
    public static void Print(IReadOnlyList<EngineResult> results)
    {
        var own = results[0];
        string[][] lines =
        [
            ["engine", "load, s", "MB", "back, median ms (answered)", "times ours", "forward, median ms (answered)", "times ours", "answers"],
            ["---", "---:", "---:", "---:", "---:", "---:", "---:", "---"],
            .. results.Select(result => new[]
            {
                result.Engine, result.Load, double.IsNaN(result.Megabytes) ? "-" : result.Megabytes.ToString("0", CultureInfo.InvariantCulture),
                result.Back.ToString(), result.Back.RatioTo(own.Back), result.Forward.ToString(), result.Forward.RatioTo(own.Forward),
                result.Answers,
            }),
        ];
        Console.WriteLine();
        foreach (var line in lines)
        {
            Console.WriteLine($"| {string.Join(" | ", line)} |");
        }

        Console.WriteLine();
    }
}
