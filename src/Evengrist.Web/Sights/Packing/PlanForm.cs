using System.Globalization;
using System.Text.RegularExpressions;
using Evengrist.Packing.Orders;
using Evengrist.Packing.Runs;
using Evengrist.Plant.Answers;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Packing;
using Evengrist.Web.Sights.Bins;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>What a person asks of the run order: all open orders anew, or with a rush order on paper.</summary>
public sealed partial class PlanForm
{
    /// <summary><c>plan</c> or <c>rush</c>.</summary>
    public string? Do { get; set; }

    /// <summary>Longest search, seconds.</summary>
    public string? Seconds { get; set; }

    /// <summary>Whether no clean-down may stand in the plan.</summary>
    public bool NoCleanDown { get; set; }

    /// <summary>Code of the rush order's product.</summary>
    public string? Product { get; set; }

    /// <summary>Its tonnes.</summary>
    public string? Tonnes { get; set; }

    /// <summary>When it is due.</summary>
    public string? Due { get; set; }

    /// <summary>How much its being late counts.</summary>
    public string? Priority { get; set; }

    /// <summary>Whether a rush order is supposed.</summary>
    internal bool IsRush => Do == "rush";

    /// <summary>What is wrong, or why there is no plan, each a sentence.</summary>
    internal IReadOnlyList<string> Faults { get; private set; } = [];

    /// <summary>What should be looked at though there is a plan.</summary>
    internal IReadOnlyList<string> Warnings { get; private set; } = [];

    /// <summary>Makes the plan.</summary>
    internal Evengrist.Packing.Boards.PackingPlan? Make(Mill mill, Instant at, Func<string?, Instant?> read)
    {
        List<string> faults = [];
        var seconds = TypedNumber.Read("Longest search, s", Seconds, faults, 0.5, 60) ?? 4;
        var supposed = IsRush ? Rush(mill, at, read, faults) : null;
        Faults = faults;
        if (faults.Count > 0)
        {
            return null;
        }

        var (posed, outcome, plan) = new PlanRuns(at) { Longest = TimeSpan.FromSeconds(IsRush ? Math.Min(seconds, LongestRush) : seconds), Supposed = supposed, MayCleanDown = NoCleanDown ? false : null }.In(mill);
        Faults = plan is null ? [.. PackingPlanAnswer.Of(outcome, posed.Spec).Reasons.Select(r => Clock(r, posed.Start)), .. outcome is RunOrderRefused ? posed.LeftOut.Select(l => $"{l.Order}: {l.Why}") : []] : [];
        return plan;
    }

    // The solver counts minutes from the start of the plan; a person reads the clock.
    private static string Clock(string reason, Instant start) => AtMinute().Replace(reason, found => $"from {start + Duration.FromMinutes(int.Parse(found.ValueSpan[10..], CultureInfo.InvariantCulture))}");

    [GeneratedRegex("at minute [0-9]{1,6}")]
    private static partial Regex AtMinute();

    // Somebody waits on the telephone: with settling and drawing the answer is to be there in five seconds.
    private const double LongestRush = 2.5;

    /// <summary>What a rush order is called on paper.</summary>
    internal const string OnPaper = "on paper";

    private PackingOrder? Rush(Mill mill, Instant at, Func<string?, Instant?> read, List<string> faults)
    {
        var tonnes = TypedNumber.Read("Tonnes of the rush order", Tonnes, faults, 0.001, 10_000, demanded: true);
        var priority = TypedNumber.Read("Its priority", Priority, faults, 1, PackingOrder.MostPriority) ?? 1;
        var due = read(Due);
        if (due is null)
        {
            faults.Add(string.IsNullOrWhiteSpace(Due) ? "When the rush order is due is missing." : $"“{Due}” is no day and time.");
        }

        var product = Products.Find(mill, Product ?? "");
        if (product is null)
        {
            faults.Add(string.IsNullOrWhiteSpace(Product) ? "Choose the product of the rush order." : $"There is no product {Product}.");
        }

        if (faults.Count > 0 || due is null || product is null || tonnes is null)
        {
            return null;
        }

        var order = new PackingOrder(OnPaper, "", product.Code, Mass.FromTonnes((decimal)tonnes.Value).Grams / 1000m, OrderUnit.Kilograms, due.Value, at) { Priority = (int)priority };
        faults.AddRange(product.Label is null ? order.Warnings(product, at) : []);
        Warnings = order.Warnings(product, at);
        return order;
    }
}
