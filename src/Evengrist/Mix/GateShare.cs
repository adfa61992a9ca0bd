namespace Evengrist.Mix;

/// <summary>One gate of a mix.</summary>
/// <param name="Bin">The bin.</param>
/// <param name="Share">Its share, 0 to 1, of the mass as it lies.</param>
/// <param name="TonnesPerHour">t/h; null where no rate was given.</param>
public sealed record GateShare(MixBin Bin, double Share, double? TonnesPerHour);
