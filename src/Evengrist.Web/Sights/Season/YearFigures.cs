using Evengrist.Quantities;
using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Figures of a plan as pages show them.</summary>
public static class YearFigures
{
    private const string Source = "the plan; docs/model/season.md";

    /// <summary>Money of a plan.</summary>
    public static Figure Money(string what, double value, string currency, string formula, int decimals = 0) =>
        Figure.Reckoned(what, (decimal)value, currency, decimals, new Because(formula, [], Source));

    /// <summary>Tonnes of a plan.</summary>
    public static Figure Tonnes(string what, double value, string formula, int decimals = 0) =>
        Figure.Reckoned(what, (decimal)value, "t", decimals, new Because(formula, [], Source));

    /// <summary>The cost of a plan, opened into its kinds.</summary>
    public static Figure Cost(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var (costs, currency) = (plan.Costs, plan.Spec.Currency);
        Figure Part(string what, double value, string formula) => Money(what, value, currency, formula);
        return Figure.Reckoned("Cost of the year from here", (decimal)costs.Total, currency, 0, new Because(
            "Wheat bought + keeping + relaxations + misses + flour not made − by-products − what is left. Wheat in store is paid for and costs nothing here.",
            [
                Part("Wheat bought", costs.Purchases, "Tonnes of each step of each offer times its price."), Part("Keeping", costs.Storage, "t at the end of each period times weeks times the price of keeping."),
                Part("Relaxations", costs.Relief, "What customers are paid for them."), Part("Misses, as priced", costs.Misses, "t·units missed times the price of a miss: no bill, but a measure."),
                Part("Flour not made, as priced", costs.Unmet, "t times the price of flour that is not made: no bill, but a measure."),
                Part("By-products", costs.ByProducts, "Wheat less flour, times their worth."), Part("Left at the end", costs.EndValue, "Wheat left times its worth."),
            ],
            Source));
    }
}
