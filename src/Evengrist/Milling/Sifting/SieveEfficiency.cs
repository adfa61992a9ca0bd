namespace Evengrist.Milling.Sifting;

/// <summary>What a test of one cloth says: of the feed, its overs and its throughs the share that is finer than the cloth.</summary>
/// <param name="Throughs">Throughs as a share of the feed: (f − o)/(u − o).</param>
/// <param name="Recovery">Share of what is fine in the feed that fell through: U·u/f.</param>
public sealed record SieveEfficiency(double Throughs, double Recovery)
{
    /// <summary>From the share of fines in feed, overs and throughs, each 0 to 1.</summary>
    /// <exception cref="ArgumentException">The feed does not lie between overs and throughs.</exception>
    public static SieveEfficiency Of(double feed, double overs, double throughs)
    {
        if (!(overs >= 0 && throughs <= 1 && overs <= feed && feed <= throughs && overs < throughs && feed > 0))
        {
            throw new ArgumentException("The feed holds no fewer fines than the overs and no more than the throughs, all from 0 to 1: sample the three again.");
        }

        var share = (feed - overs) / (throughs - overs);
        return new SieveEfficiency(share, share * throughs / feed);
    }
}
