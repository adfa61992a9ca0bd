using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>What one cause moved the pay of a load by.</summary>
/// <param name="What">The cause as the ticket names it: dockage, water above the base, protein scale.</param>
/// <param name="Money">Positive for a premium, negative for a discount or for mass taken off; not rounded.</param>
/// <remarks>Mass taken off counts at the base price, an effect on the price counts on the settled quantity. Model: docs/model/settlement.md.</remarks>
public sealed record PriceMove(string What, Money Money);
