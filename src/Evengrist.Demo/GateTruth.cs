using NodaTime;

namespace Evengrist.Demo;

/// <summary>How the gates of the demonstration mill really give what they are set to in the weeks of its mix sheets. Invented, and nowhere in the records.</summary>
internal sealed class GateTruth(ulong seed)
{
    private readonly Dice dice = new(seed, "gates");
    private readonly Dictionary<(LocalDate, string), double> ofTheDay = [];

    /// <summary>t/h given where nothing is set, and t/h for one set; a gate that is not named gives what it is set to.</summary>
    private static readonly Dictionary<string, (double Offset, double Slope)> Gates = new()
    {
        ["B01"] = (0.30, 0.965), ["B02"] = (-0.20, 1.020), ["B03"] = (0.20, 0.955), ["B04"] = (-0.25, 1.030), ["B05"] = (0.12, 1.010), ["B06"] = (0.45, 0.930), ["B07"] = (0.10, 0.960),
        ["B10"] = (0.15, 0.960), ["B11"] = (-0.10, 1.010), ["B17"] = (0.20, 0.970), ["B19"] = (-0.15, 1.010),
    };

    /// <summary>What a gate gives, t/h: by its line, by how the wheat runs that day (1 %), and from one stretch to the next (0.4 %).</summary>
    public double Gives(string bin, double set, LocalDate day)
    {
        if (!ofTheDay.TryGetValue((day, bin), out var runs))
        {
            ofTheDay.Add((day, bin), runs = dice.Normal(1, 0.010));
        }

        var (offset, slope) = Gates.GetValueOrDefault(bin, (0, 1));
        return Math.Max(0, (offset + (slope * set)) * runs * dice.Normal(1, 0.004));
    }
}
