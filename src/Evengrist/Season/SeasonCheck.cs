using System.Globalization;

namespace Evengrist.Season;

/// <summary>Checks a plan against what it was made from, by itself: balances, room, hours, limits, mix rules, choices and money. A plan that fails is never shown.</summary>
/// <remarks>It shares no code with what builds the problem; it reads the plan's rows alone. Tolerance: 1e-6 of what is compared, and never less than 1e-6 t. Model: docs/model/season.md.</remarks>
public static class SeasonCheck
{
    /// <summary>Every fault, in words; empty where the plan holds.</summary>
    public static IReadOnlyList<string> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var tally = new PlanTally(plan);
        var faults = new List<string>(tally.Faults);
        faults.AddRange(StoreCheck.Of(tally));
        faults.AddRange(FlourCheck.Of(tally));
        faults.AddRange(LimitCheck.Of(tally));
        faults.AddRange(ChoiceCheck.Of(tally));
        faults.AddRange(MoneyCheck.Of(tally));
        if (plan.IsMillable)
        {
            faults.AddRange(MixRuleCheck.Of(tally));
        }

        return faults;
    }

    /// <summary>Whether two numbers agree to 1e-6 of the scale of what was summed.</summary>
    internal static bool Agree(double a, double b, double scale = 0) => Math.Abs(a - b) <= 1e-6 * Math.Max(1, Math.Max(scale, Math.Max(Math.Abs(a), Math.Abs(b))));

    /// <summary>Whether one number does not lie above another, to 1e-6.</summary>
    internal static bool NotAbove(double a, double b, double scale = 0) => a <= b || Agree(a, b, scale);

    internal static string Tonnes(double value) => value.ToString("0.######", CultureInfo.InvariantCulture) + " t";
}
