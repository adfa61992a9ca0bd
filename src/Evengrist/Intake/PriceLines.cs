using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>From the base price to the price paid; effects add.</summary>
internal sealed class PriceLines
{
    public PriceLines(ContractTerms terms, IReadOnlyList<ScaleLine> scales)
    {
        Price = terms.Base;
        var unit = $"{terms.Base.Money.Currency}/{terms.Base.PerText}";
        Lines.Add(Figure.Seen("base price", terms.Base.Money.Amount, unit) with { Because = new Because("agreed", [], terms.Title) });
        foreach (var scale in scales.Where(s => s.Kind == ScaleEffect.AddsToPrice))
        {
            var effect = scale.PriceEffect.In(terms.Base.Per);
            Price += effect;
            Lines.Add(scale.Figure(unit, effect.Money.Amount));
        }

        Line = Figure.Reckoned("price", Price.Money.Amount, unit, Math.Clamp((int)Price.Money.Amount.Scale, 2, 6), new Because("base price + every effect", [.. Lines], terms.Title));
        Lines.Add(Line);
    }

    public List<Figure> Lines { get; } = [];

    public Price Price { get; }

    public Figure Line { get; }
}
