using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>Settles a load under a contract: net, less dockage, less water above the base, mass effects, price effects, pay.</summary>
/// <remarks>
/// <para>Nothing is rounded on the way: factors are recorded by rule before they are looked up, and the pay is rounded once, at the end.</para>
/// <para>Price effects add, mass effects multiply; the order of the scales does not matter. Model: docs/model/settlement.md.</para>
/// </remarks>
public static class SettlementModel
{
    /// <summary>Settles a load.</summary>
    /// <param name="delivery">Weights, day and findings.</param>
    /// <param name="terms">The contract.</param>
    /// <returns>A <see cref="Settlement"/>, or <see cref="NotSettled"/> with every reason found.</returns>
    public static SettlementOutcome Settle(Delivery delivery, ContractTerms terms)
    {
        ArgumentNullException.ThrowIfNull(delivery);
        ArgumentNullException.ThrowIfNull(terms);
        var faults = SettlementCheck.Of(delivery, terms);
        if (faults.Count > 0)
        {
            return new NotSettled(faults);
        }

        var scales = terms.Scales.Select(s => new ScaleLine(s, delivery, terms)).ToList();
        var refused = scales.Select(s => s.Refusal).OfType<string>().Concat(Observed(delivery, terms)).ToList();
        if (refused.Count > 0)
        {
            return new NotSettled(refused);
        }

        var mass = new MassLines(delivery, terms, scales);
        var price = new PriceLines(delivery, terms, scales);
        if (mass.Settled <= 0m || price.Price.Money.Amount < 0m)
        {
            return new NotSettled([$"There is nothing to pay for: {Shown.Digits(mass.Settled, 1)} kg at {price.Price}. Check weights and dockage, or agree a price for this load."]);
        }

        var pay = (price.Price.Money * mass.Quantity.Value).Rounded();
        var payLine = Figure.Reckoned("pay", pay.Amount, pay.Currency, CurrencyDecimals.Of(pay.Currency), new Because("quantity × price, rounded once, half up", [mass.Quantity, price.Line], terms.Title));
        return new Settlement(
            [.. mass.Lines, .. price.Lines, payLine],
            delivery.Weighing.Net, Mass.FromKilograms(mass.Clean), Mass.FromKilograms(mass.Settled), mass.Bushels, price.Price, pay)
        {
            Under = string.Join(", ", terms.Scales.Select(s => s.Title).Prepend(terms.Title)),
            AtBase = terms.Base.Money * (mass.Quantity.Value * delivery.Weighing.Net.Kilograms / mass.Settled),
            Moves = Moves(mass, price, terms),
            WaterShrink = Mass.FromKilograms(mass.WaterShrink),
            ContractShrink = Mass.FromKilograms(mass.Clean - mass.WaterShrink - mass.Settled),
        };
    }

    // Mass at the base price, effects on what is left: together exactly what lies between net at base price and pay.
    private static List<PriceMove> Moves(MassLines mass, PriceLines price, ContractTerms terms) =>
    [
        .. mass.Moved.Select(m => new PriceMove(m.What, terms.Base.Money * (mass.Quantity.Value * m.Kilograms / mass.Settled))),
        .. price.Moved.Where(m => m.Each != 0m).Select(m => new PriceMove(m.What, Money.Of(m.Each * mass.Quantity.Value, terms.Base.Money.Currency))),
    ];

    private static IEnumerable<string> Observed(Delivery delivery, ContractTerms terms) => (terms.Observed ?? [])
        .Where(c => c.Refused && delivery.Observed.Any(c.IsAbout)).Select(c => $"{c.What} was observed: under {terms.Title} such a load is not taken.");
}
