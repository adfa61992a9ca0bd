namespace Evengrist.Season;

/// <summary>Flour that comes of a t of wheat.</summary>
public static class SeasonYield
{
    /// <summary>t of flour for a t of wheat: the wheat's own yield of that flour, or the flour's yield plus the wheat's points/100.</summary>
    public static double Of(SeasonWheat wheat, SeasonFlour flour)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(flour);
        return wheat.YieldOf.TryGetValue(flour.Code, out var own) ? own : flour.Yield + (wheat.ExtractionPoints / 100);
    }

    /// <summary>Whether a wheat may go into a flour.</summary>
    public static bool Allows(SeasonFlour flour, SeasonWheat wheat)
    {
        ArgumentNullException.ThrowIfNull(wheat);
        ArgumentNullException.ThrowIfNull(flour);
        return (flour.Classes.Count == 0 || flour.Classes.Contains(wheat.WheatClass)) && (flour.Wheats.Count == 0 || flour.Wheats.Contains(wheat.Code));
    }
}
