using System.Globalization;
using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Specifications;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Laboratory;

/// <summary>One line of a specification as it was typed.</summary>
public sealed class SpecificationRow
{
    private const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;

    /// <summary>The rules to choose from.</summary>
    internal static IReadOnlyList<(ResultRule Value, string Says)> Rules { get; } = [(ResultRule.MeanOf, "mean of n"), (ResultRule.Single, "each by itself"), (ResultRule.LotRange, "every part")];

    /// <summary>The decision rules to choose from.</summary>
    internal static IReadOnlyList<(DecisionRule Value, string Says)> Decisions { get; } = [(DecisionRule.Simple, "simple: within the limits is accepted"), (DecisionRule.Guarded, "guarded"), (DecisionRule.GuardedForSafety, "guarded for safety, else simple")];

    /// <summary>A <see cref="Property"/> by name.</summary>
    public string? What { get; set; }

    /// <summary>The unit; the usual one where empty.</summary>
    public string? Unit { get; set; }

    /// <summary>Moisture basis of a share of solids.</summary>
    public string? Basis { get; set; }

    /// <summary>The method results must be by; empty for any.</summary>
    public string? Method { get; set; }

    /// <summary>The least.</summary>
    public string? Lower { get; set; }

    /// <summary>What is aimed at.</summary>
    public string? Target { get; set; }

    /// <summary>The most.</summary>
    public string? Upper { get; set; }

    /// <summary>A <see cref="ResultRule"/> by name.</summary>
    public string? Rule { get; set; }

    /// <summary>How many results a mean needs.</summary>
    public string? Needed { get; set; }

    /// <summary>Who asks for it.</summary>
    public string? Source { get; set; }

    /// <summary>A <see cref="DecisionRule"/> by name.</summary>
    public string? Decision { get; set; }

    /// <summary>The buyer's risk at the limit, %.</summary>
    public string? Risk { get; set; }

    /// <summary>An agreed guard band.</summary>
    public string? Guard { get; set; }

    /// <summary>The lot's own spread.</summary>
    public string? LotSpread { get; set; }

    /// <summary>What one instrument shares.</summary>
    public string? BiasPart { get; set; }

    /// <summary>Standard uncertainty of the customer's laboratory; empty where nothing is known of it.</summary>
    public string? Customer { get; set; }

    /// <summary>Its bias.</summary>
    public string? CustomerBias { get; set; }

    /// <summary>Standard uncertainty of that.</summary>
    public string? CustomerBiasPm { get; set; }

    /// <summary>Whether it is a matter of safety.</summary>
    public bool Safety { get; set; }

    /// <summary>Whether a lot goes without a result of it.</summary>
    public bool Optional { get; set; }

    /// <summary>Whether the line is taken out.</summary>
    public bool Out { get; set; }

    /// <summary>Whether anything was typed into its first fields.</summary>
    internal bool IsEmpty => new[] { What, Lower, Target, Upper, Method }.All(string.IsNullOrWhiteSpace);

    /// <summary>A line that is kept, as it is typed.</summary>
    internal static SpecificationRow Of(SpecificationItem item) => new()
    {
        What = item.What.ToString(), Unit = item.Unit, Basis = item.Basis.IsStated ? item.Basis.ToString() : "", Method = item.Method, Lower = Say(item.Lower), Target = Say(item.Target), Upper = Say(item.Upper), Rule = item.Rule.ToString(),
        Needed = Say((decimal)item.Needed), Source = item.Source, Decision = item.Decision.ToString(), Risk = Say((decimal)(100 * item.BuyersRisk)), Guard = Say(item.Guard), LotSpread = Say(item.LotSpread), BiasPart = Say(item.BiasPart),
        Customer = Say(item.Customer?.Uncertainty), CustomerBias = Say(item.Customer?.Bias), CustomerBiasPm = Say(item.Customer?.BiasUncertainty), Safety = item.Safety, Optional = !item.Required,
    };

    /// <summary>The line; null with every fault where a field cannot be read.</summary>
    /// <param name="number">Its number in the form, from 1.</param>
    /// <param name="faults">Takes the faults.</param>
    internal SpecificationItem? Read(int number, List<string> faults)
    {
        var (before, what) = (faults.Count, TypedProperty.Read(What));
        if (what == Property.None)
        {
            faults.Add($"Line {number}: choose the property.");
            return null;
        }

        decimal? Number(string? text, string words)
        {
            if (string.IsNullOrWhiteSpace(text))
            {
                return null;
            }

            if (decimal.TryParse(text.Trim(), Plain, CultureInfo.InvariantCulture, out var value))
            {
                return value;
            }

            faults.Add($"Line {number}, {what.Words()}: {words} is a number with a point as decimal mark; read “{text.Trim()}”.");
            return null;
        }

        var basis = default(Basis);
        if (!string.IsNullOrWhiteSpace(Basis) && !Quantities.Basis.TryParse(Basis, out basis))
        {
            faults.Add($"Line {number}, {what.Words()}: “{Basis.Trim()}” is no basis: write dry, 14mb or another.");
        }

        var needed = Number(Needed, "how many results a mean needs") ?? 1;
        if (needed != decimal.Truncate(needed) || Math.Abs(needed) > ConformitySpec.Most)
        {
            faults.Add($"Line {number}, {what.Words()}: a mean is of a whole number of results, 1 to {ConformitySpec.Most}; read “{Needed?.Trim()}”.");
            needed = 1;
        }

        var customer = (Own: Number(Customer, "the uncertainty of the customer's laboratory"), Bias: Number(CustomerBias, "its bias"), Pm: Number(CustomerBiasPm, "the uncertainty of its bias"));
        if (customer.Own is null && (customer.Bias ?? customer.Pm ?? 0) != 0)
        {
            faults.Add($"Line {number}, {what.Words()}: give the uncertainty of the customer's laboratory beside its bias.");
        }

        var item = new SpecificationItem(what, string.IsNullOrWhiteSpace(Unit) ? Readings.UnitsOf(what)[0] : Unit.Trim(), (Source ?? "").Trim())
        {
            Basis = basis, Method = (Method ?? "").Trim(), Lower = Number(Lower, "the least"), Target = Number(Target, "the target"), Upper = Number(Upper, "the most"), Needed = (int)needed,
            Rule = Rules.FirstOrDefault(r => r.Value.ToString() == Rule).Value, Decision = Decisions.FirstOrDefault(d => d.Value.ToString() == Decision).Value,
            BuyersRisk = (double)(Number(Risk, "the buyer's risk, %,") ?? (decimal)(100 * GuardBand.UsualRisk)) / 100, Guard = Number(Guard, "the guard band"), LotSpread = (double)(Number(LotSpread, "the lot's own spread") ?? 0),
            BiasPart = (double)(Number(BiasPart, "what one instrument shares") ?? 0), Customer = customer.Own is { } own ? new CustomerLaboratory((double)own, (double)(customer.Bias ?? 0), (double)(customer.Pm ?? 0)) : null, Safety = Safety, Required = !Optional,
        };
        return faults.Count > before ? null : item;
    }

    private static string Say(double? number) => number?.ToString("0.##########", CultureInfo.InvariantCulture) ?? "";

    private static string Say(decimal? number) => number?.ToString(CultureInfo.InvariantCulture) ?? "";
}
