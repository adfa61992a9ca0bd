using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>One scale asked about one load: the finding carried to the scale's unit and basis, and the answer with its reason.</summary>
internal sealed class ScaleLine
{
    private readonly ContractScale scale;
    private readonly Finding? found;
    private readonly Finding finding;
    private readonly decimal? uncertainty;

    public ScaleLine(ContractScale scale, Delivery delivery, ContractTerms terms)
    {
        this.scale = scale;
        found = delivery.Findings.SingleOrDefault(f => f.What == scale.Factor);
        finding = found ?? new Finding(scale.Factor, scale.NotReadCountsAs!.Value, scale.Unit, scale.Basis);
        var (value, slope) = Carried(finding, scale, terms.Durum);
        Answer = scale.Ask(value);
        uncertainty = finding.StandardUncertainty * slope;
    }

    public ScaleAnswer Answer { get; }

    public ScaleEffect Kind => scale.Effect;

    /// <summary>Money for each unit, or per cent of the mass; 0 where the scale gives no effect.</summary>
    public decimal Effect => Answer is ScaleEffectOf given ? given.Effect : 0m;

    public string? Refusal => Answer switch
    {
        ScaleRejects r => $"{Name} of {Text(r.Recorded)} is beyond {Text(r.Limit)}: under scale {scale.Title} such a load is not taken.",
        ScaleSilent s => $"{Name} of {Text(s.Recorded)} lies beyond the end of scale {scale.Title} at {Text(s.End)}: agree a price for this load.",
        _ => null,
    };

    /// <summary>What the line is called on the ticket.</summary>
    public string Title => scale.Line ?? $"{Name} scale";

    public Price PriceEffect => Price.Of(Money.Of(Effect, scale.Currency!), scale.Per);

    private string Name => scale.Factor.Words();

    /// <summary>The effect as a line: the step that counted, the finding, and the table's source.</summary>
    public Figure Figure(string unit, decimal value)
    {
        var given = (ScaleEffectOf)Answer;
        var rounding = scale.Rounding switch { StepRounding.Floor => "step downward", StepRounding.Begun => "step begun", _ => "nearest step" };
        var source = scale.Source.Length == 0 ? scale.Title : $"{scale.Title}: {scale.Source}";
        return Quantities.Figure.Reckoned(Title, value, unit, Math.Clamp((int)value.Scale, 2, 6), new Because($"{rounding} to {Text(given.Step)}", [RecordedFactor(given.Recorded)], source));
    }

    private Figure RecordedFactor(decimal value) => Quantities.Figure.Reckoned(Name, value, scale.Unit, scale.RecordedDecimals, found is null
        ? new Because("not read: counts as this", [], scale.Title)
        : new Because(scale.Basis.IsStated ? $"carried to {scale.Basis}, recorded half up" : "recorded half up", [finding.AsFigure()], "7 CFR 810.104")) with
    {
        Basis = scale.Basis, StandardUncertainty = uncertainty,
    };

    // In the scale's unit and basis, multiplied before it is divided so that a half stays a half; the slope carries the ±.
    internal static (decimal Value, decimal Slope) Carried(Finding finding, ContractScale scale, bool durum)
    {
        if (scale.Factor == Property.TestWeight && finding.Unit != scale.Unit)
        {
            var (from, to) = (TestWeightFormula.Of(TestWeight.ConventionOf(finding.Unit, durum)), TestWeightFormula.Of(TestWeight.ConventionOf(scale.Unit, durum)));
            return (to.FromKilogramsPerHectolitre(from.ToKilogramsPerHectolitre(finding.Value)), from.Slope / to.Slope);
        }

        return scale.Basis.IsStated ? (finding.Basis.Restated(finding.Value, scale.Basis), finding.Basis.Restated(1m, scale.Basis)) : (finding.Value, 1m);
    }

    private string Text(decimal value) => string.Create(CultureInfo.InvariantCulture, $"{value} {scale.Unit}{(scale.Basis.IsStated ? " " + scale.Basis : "")}");
}
