using System.Globalization;

namespace Evengrist.Web.Sights.Season;

/// <summary>How many futures a person asks for and from which seed, as typed.</summary>
/// <param name="Futures">How many.</param>
/// <param name="Seed">The seed.</param>
/// <param name="Faults">What is wrong, each a sentence; empty where nothing is.</param>
public sealed record PromiseQuestion(int Futures, long Seed, IReadOnlyList<string> Faults)
{
    /// <summary>Fewest futures a page reckons, so that a probability of 85 % is known to 4 points [design].</summary>
    public const int Fewest = 300;

    /// <summary>Most futures a page reckons, so that the mill's other work does not wait for long [design].</summary>
    public const int Most = 20_000;

    /// <summary>Reads what was typed; what is empty is 1,000 futures from seed 1.</summary>
    public static PromiseQuestion Of(string? futures, string? seed)
    {
        var faults = new List<string>();
        var (count, from) = (1000, 1L);
        if (!string.IsNullOrWhiteSpace(futures) && !(int.TryParse(futures, NumberStyles.AllowThousands | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out count) && count is >= Fewest and <= Most))
        {
            faults.Add(string.Create(CultureInfo.InvariantCulture, $"Futures: a whole number from {Fewest} to {Most:N0} is needed; read “{futures.Trim()}”."));
        }

        if (!string.IsNullOrWhiteSpace(seed) && !long.TryParse(seed, NumberStyles.AllowLeadingSign | NumberStyles.AllowLeadingWhite | NumberStyles.AllowTrailingWhite, CultureInfo.InvariantCulture, out from))
        {
            faults.Add($"Seed: a whole number such as 1 is needed; read “{seed.Trim()}”.");
        }

        return new PromiseQuestion(count, from, faults);
    }
}
