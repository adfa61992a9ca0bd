using Evengrist.Ledger;

namespace Evengrist.Streams.Additions;

/// <summary>What the ledger says was put into a bin's flour in a span.</summary>
/// <param name="Mixer">Where the feeder stands.</param>
/// <param name="To">The bin the flour went to.</param>
/// <param name="Additive">What was put in.</param>
/// <param name="FlourTonnes">Flour that ran to the bin, the additive in it, t; stops count.</param>
/// <param name="Kilograms">What of the additive came in while it ran, kg.</param>
/// <param name="Lots">The lots it came from.</param>
public sealed record FedDose(Place Mixer, Place To, string Additive, double FlourTonnes, double Kilograms, IReadOnlyList<string> Lots)
{
    /// <summary>The mean dose, g to a tonne of flour.</summary>
    public double GramsPerTonne => Kilograms * 1000 / FlourTonnes;
}
