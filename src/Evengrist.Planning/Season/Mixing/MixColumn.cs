using System.Globalization;

namespace Evengrist.Planning.Season.Mixing;

/// <summary>A way to mix a flour in a period that keeps its rules: no more wheats than gates, each with at least the least share.</summary>
/// <param name="Flour">The flour.</param>
/// <param name="Period">The period.</param>
/// <param name="Wheats">The wheats it draws, ascending.</param>
/// <param name="Shares">Share of each, by mass as it lies; they sum to 1.</param>
/// <param name="Penalty">What its misses and relief cost, money per t of wheat.</param>
internal sealed record MixColumn(int Flour, int Period, int[] Wheats, double[] Shares, double Penalty)
{
    /// <summary>Alike for mixes that are alike.</summary>
    public string Words { get; } = string.Create(CultureInfo.InvariantCulture, $"{Flour}.{Period}:{string.Join(' ', Wheats)}:{string.Join(' ', Shares.Select(s => s.ToString("0.0000000", CultureInfo.InvariantCulture)))}");
}
