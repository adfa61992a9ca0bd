using System.Globalization;
using Evengrist.Packing.NetContent;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Web.Sights.Packing;

/// <summary>Empty packages weighed by hand, as typed.</summary>
public sealed class TareForm
{
    /// <summary>Code of the product.</summary>
    public string? Product { get; set; }

    /// <summary>When, by the mill's clock.</summary>
    public string? At { get; set; }

    /// <summary>Weights, grams, parted by blanks.</summary>
    public string? Weights { get; set; }

    /// <summary>Which delivery.</summary>
    public string? Delivery { get; set; }

    /// <summary>Keeps them; every fault where they cannot be.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="at">When, as read; null where it could not be.</param>
    /// <param name="by">Who.</param>
    /// <param name="nameless">What is said where nobody is named.</param>
    /// <param name="now">The present moment.</param>
    public IReadOnlyList<string> Keep(Mill mill, Instant? at, string? by, string nameless, Instant now)
    {
        var faults = new List<string>(EntryFaults.Of("-", at, by, nameless));
        var weights = WeightsOf(Weights, faults);
        return faults.Count > 0 ? faults : TareSamples.Keep(mill, new TareSample((Product ?? "").Trim(), at!.Value, weights, (Delivery ?? "").Trim()), by, now);
    }

    /// <summary>Weights parted by blanks, semicolons or line ends.</summary>
    internal static double[] WeightsOf(string? text, List<string> faults)
    {
        var weights = new List<double>();
        foreach (var (n, word) in (text ?? "").Split([' ', ';', '\t', '\r', '\n'], StringSplitOptions.RemoveEmptyEntries).Index())
        {
            if (double.TryParse(word, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var weight))
            {
                weights.Add(weight);
            }
            else
            {
                faults.Add($"Weight {n + 1}, “{(word.Length > 20 ? word[..20] + "…" : word)}”, is no number with a point as decimal mark.");
            }
        }

        return [.. weights];
    }
}
