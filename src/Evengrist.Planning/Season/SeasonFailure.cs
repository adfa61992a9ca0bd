using System.Globalization;
using Evengrist.Planning.Solving;
using Evengrist.Season;

namespace Evengrist.Planning.Season;

/// <summary>What is said where no plan came of it.</summary>
internal static class SeasonFailure
{
    public static SeasonFailed Of(ExitReason exit, SeasonModel model) => new(SeasonReading.ExitOf(exit), exit switch
    {
        ExitReason.TimeReached => "Time ran out before a plan was found: give it longer.",
        ExitReason.Cancelled => "It was stopped before a plan was found.",
        ExitReason.Unbounded => $"The cost could fall without end: an end value or a by-product's value is above what a wheat costs, with no limit on how much. Look at the {(model.Spec.Offers.Count > 0 ? "offers " + string.Join(", ", model.Spec.Offers.Select(o => o.Code)) : "end values")}.",
        _ => $"The solver gave up. Plan again, and if it fails again look for very large or very small numbers in what was given; the largest is {Largest(model.Problem)}.",
    });

    private static string Largest(LinearProblem problem)
    {
        var numbers = problem.Rows.SelectMany(r => new[] { (r.Lower, r.Name), (r.Upper, r.Name) }).Concat(problem.Columns.SelectMany(c => new[] { (c.Upper, c.Name), (c.Cost, c.Name) }));
        var (number, name) = numbers.Where(n => double.IsFinite(n.Item1)).MaxBy(n => Math.Abs(n.Item1));
        return string.Create(CultureInfo.InvariantCulture, $"{Math.Abs(number):0.###E+0} ({name})");
    }

    /// <summary>The plan, or, where it does not pass our own check, none.</summary>
    public static SeasonOutcome Checked(SeasonPlan plan)
    {
        var faults = SeasonCheck.Of(plan);
        return faults.Count == 0 ? new SeasonPlanned(plan)
            : new SeasonFailed(SeasonExit.SolverFailed, $"The solver's plan does not pass our own check and is not shown: {string.Join(" ", faults.Take(3))}");
    }
}
