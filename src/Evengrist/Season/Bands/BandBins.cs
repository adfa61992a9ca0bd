namespace Evengrist.Season.Bands;

/// <summary>A band and the bins it takes.</summary>
/// <param name="Band">The band.</param>
/// <param name="MostTonnes">The most that will lie there of it, t.</param>
/// <param name="Bins">Codes of its bins, largest first.</param>
/// <param name="RoomTonnes">How much they hold, t.</param>
public sealed record BandBins(HarvestBand Band, double MostTonnes, IReadOnlyList<string> Bins, double RoomTonnes)
{
    /// <summary>What finds no room, t: it has to be milled as it comes, or lie elsewhere.</summary>
    public double ShortTonnes => Math.Max(0, MostTonnes - RoomTonnes);
}
