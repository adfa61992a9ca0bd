using System.Globalization;

namespace Evengrist.Laboratory.Calibration;

/// <summary>Where the channels of a spectrum lie.</summary>
/// <param name="Positions">Each channel's place, rising or falling throughout.</param>
/// <param name="Unit">Unit of the places: <c>nm</c>, <c>1/cm</c>, or <c>channel</c> where only their number is known.</param>
public sealed record SpectralAxis(IReadOnlyList<double> Positions, string Unit)
{
    /// <summary>Most channels [ours].</summary>
    public const int Most = 5000;

    // Places are written with few decimals: channels a thousandth of a step apart are the same channel.
    private const double SameShare = 1e-3;

    /// <summary>Channels.</summary>
    public int Count => Positions.Count;

    /// <summary>Whether all steps are alike, as a derivative by neighbours asks for.</summary>
    public bool IsEven => Count < 3 || Enumerable.Range(1, Count - 1).All(i => Math.Abs(Positions[i] - Positions[i - 1] - MeanStep) <= 0.01 * Math.Abs(MeanStep));

    private double MeanStep => (Positions[^1] - Positions[0]) / (Count - 1);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
        Count is < 2 or > Most ? [$"A spectrum has {Count} channels: 2 to {Most} are read."]
        : Positions.Any(p => !double.IsFinite(p)) ? ["The place of a channel is no number."]
        : Enumerable.Range(1, Count - 1).Any(i => !((Positions[i] - Positions[i - 1]) * (Positions[1] - Positions[0]) > 0)) ? ["Channels stand in rising or in falling order, each once."]
        : [];

    /// <summary>In what another axis differs from this one, in words; null where it does not.</summary>
    public string? Difference(SpectralAxis other)
    {
        ArgumentNullException.ThrowIfNull(other);
        if (other.Unit != Unit)
        {
            return $"channels are in {other.Unit}, not in {Unit}";
        }

        if (other.Count != Count)
        {
            return $"there are {other.Count} channels, not {Count}";
        }

        var at = Enumerable.Range(0, Count).FirstOrDefault(i => !(Math.Abs(other.Positions[i] - Positions[i]) <= SameShare * Math.Abs(MeanStep)), -1);
        return at < 0 ? null : string.Create(CultureInfo.InvariantCulture, $"channel {at + 1} lies at {other.Positions[at]} {Unit}, not at {Positions[at]}");
    }

    /// <summary>The axis without some channels at each end.</summary>
    /// <param name="channels">To drop at each end, fewer than half of all.</param>
    public SpectralAxis Inside(int channels) => channels == 0 ? this : new([.. Positions.Skip(channels).SkipLast(channels)], Unit);
}
