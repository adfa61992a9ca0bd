using Evengrist.Intake;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>Whether one test of one truck was, or is, worth its wait.</summary>
/// <param name="Cost">The test and its costs.</param>
/// <param name="Currency">Currency of the costs.</param>
/// <param name="History">What the district's earlier trucks showed; null where the truck's source is not booked.</param>
/// <param name="Found">The prior; null where there is none.</param>
/// <param name="Outcome">The advice; null where there is no prior.</param>
/// <param name="Read">The result, where the test has been made.</param>
public sealed record TestSight(TestCost Cost, string Currency, DistrictHistory? History, PriorFound? Found, TestOutcome? Outcome, Reading? Read)
{
    private const string Page = "docs/model/test-or-not.md";
    private const int HoursOfQueue = 12;

    /// <summary>Looks at every test of the costs for a truck.</summary>
    public static IReadOnlyList<TestSight> Of(Book book, TruckSight truck, TestCosts costs, int waiting)
    {
        ArgumentNullException.ThrowIfNull(truck);
        ArgumentNullException.ThrowIfNull(costs);
        return [.. costs.Tests.Select(cost =>
        {
            var history = truck.Source is { } source ? DistrictHistory.Of(book, source, cost.What, truck.At, costs.HistoryDays) : null;
            var found = history?.Prior(cost) as PriorFound;
            return new TestSight(cost, costs.Currency, history, found, found is null || truck.Net <= Mass.Zero ? null : TestModel.Ask(cost.Ask(found.Prior, (double)truck.Net.Tonnes, costs.CostPerMinute, waiting)), truck.Read(cost.What));
        })];
    }

    /// <summary>Trucks that wait behind a truck at a moment, this one included: those that stand at the gate and are not weighed yet.</summary>
    public static int Waiting(Book book, Place truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        return 1 + book.Happenings.Where(h => h.Kind == HappeningKind.Arrived && h.At <= at && h.At > at - Duration.FromHours(HoursOfQueue) && h.On != truck.Id && book.Counts(h))
            .Select(h => h.On).Distinct().Count(t => TruckStages.Of(book, book[t], at) is { Stage: TruckStage.AtGate });
    }

    /// <summary>The chance before the test.</summary>
    public Figure Chance => Figure.Reckoned($"chance that {Cost.What.Words()} lies beyond {Limit}", (decimal)(100 * Outcome!.ChanceBad), "%", 1, new Because(
        Cost.What == Property.FallingNumber ? "normal on the liquefaction number 6000/(FN − 50), the test's own error taken out" : "lognormal, fitted by mean and variance, the test's own error taken out",
        [
            Figure.Seen($"trucks of {History!.District} tested in {History.Days} days", History.Readings.Count, ""), Figure.Seen("trucks of it in all", History.Trucks, ""),
            Number("mean", Found!.Prior.Mean, PriorUnit, 2, "of the readings"), Number("standard deviation", Found.Prior.StandardDeviation, PriorUnit, 2, "√(s² − u² + s²/n)"),
        ], Page));

    /// <summary>The loss that the test is expected to avoid.</summary>
    public Figure Value => Number("loss the test avoids", Outcome!.Value, Currency, 0, "expected loss untested − expected loss tested at the best level",
        Number("expected loss untested", Outcome.LossUntested, Currency, 0, Outcome.AcceptUntested ? "into the good bin: chance × cost of a bad load there" : "into the lesser bin: chance × cost of a good load there"),
        Number("expected loss tested", Outcome.LossTested, Currency, 0, "integrated over loads and test error"), Number("knowing for certain would avoid", Outcome.ValueOfKnowing, Currency, 0, "no test is worth more"));

    /// <summary>What the wait and the test cost.</summary>
    public Figure Wait => Number("wait and test", Outcome!.QueueCost + Outcome.OwnCost, Currency, 0, "minutes × cost of a minute × trucks waiting + the test",
        Number("queue", Outcome.QueueCost, Currency, 2, "minutes × cost of a minute × trucks waiting"), Number("the test", Outcome.OwnCost, Currency, 2, "as entered"));

    /// <summary>The limit with its unit and basis.</summary>
    public string Limit => FormattableString.Invariant($"{Cost.Limit:0.###} {(Cost.What == Property.FallingNumber ? "s" : "mg/kg")}{(Cost.Basis.IsStated ? " " + Cost.Basis : "")}");

    private string PriorUnit => Cost.What == Property.FallingNumber ? "LN" : "mg/kg";

    private static Figure Number(string what, double value, string unit, int decimals, string formula, params Figure[] inputs) =>
        Figure.Reckoned(what, (decimal)value, unit, decimals, new Because(formula, inputs, Page));
}
