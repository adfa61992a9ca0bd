using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>From the base price to the price paid; effects add.</summary>
internal sealed class PriceLines
{
    public PriceLines(Delivery delivery, ContractTerms terms, IReadOnlyList<ScaleLine> scales)
    {
        Price = terms.Base;
        var unit = $"{terms.Base.Money.Currency}/{terms.Base.PerText}";
        Lines.Add(Figure.Seen("base price", terms.Base.Money.Amount, unit) with { Because = new Because("agreed", [], terms.Title) });
        foreach (var scale in scales.Where(s => s.Kind == ScaleEffect.AddsToPrice))
        {
            var effect = scale.PriceEffect.In(terms.Base.Per);
            Price += effect;
            Lines.Add(scale.Figure(unit, effect.Money.Amount));
            Moved.Add((scale.Title, effect.Money.Amount));
        }

        foreach (var charge in (terms.Observed ?? []).Where(c => delivery.Observed.Any(c.IsAbout)))
        {
            Price += Quantities.Price.Of(Money.Of(charge.Effect, terms.Base.Money.Currency), terms.Base.Per);
            Lines.Add(Figure.Reckoned(charge.What, charge.Effect, unit, Math.Clamp((int)charge.Effect.Scale, 2, 6), new Because("observed on the load", [], terms.Title)));
            Moved.Add((charge.What, charge.Effect));
        }

        Line = Figure.Reckoned("price", Price.Money.Amount, unit, Math.Clamp((int)Price.Money.Amount.Scale, 2, 6), new Because("base price + every effect", [.. Lines], terms.Title));
        Lines.Add(Line);
    }

    public List<Figure> Lines { get; } = [];

    /// <summary>What each effect adds to the price of one unit.</summary>
    public List<(string What, decimal Each)> Moved { get; } = [];

    public Price Price { get; }

    public Figure Line { get; }
}
