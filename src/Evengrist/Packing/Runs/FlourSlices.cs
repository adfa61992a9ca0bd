namespace Evengrist.Packing.Runs;

/// <summary>Flour that comes and goes evenly, in slices of whole kilograms: what an order is found with. That it errs on the safe side is for its user to see to: come at the end of a slice, gone at its beginning.</summary>
public static class FlourSlices
{
    private const int InflowMinutes = 30, RunMinutes = 60, MostSlices = 24;

    /// <summary>Whole kilograms.</summary>
    public static long Kilograms(double tonnes) => (long)Math.Round(tonnes * 1000);

    /// <summary>What the mill makes: beginning and end of each slice, and the kilograms that come in it.</summary>
    public static IEnumerable<(int From, int Until, long Kilograms)> Come(Inflow inflow)
    {
        ArgumentNullException.ThrowIfNull(inflow);
        for (var from = inflow.From; from < inflow.Until; from += InflowMinutes)
        {
            var until = Math.Min(from + InflowMinutes, inflow.Until);
            // What has come by then less what had come before: whole kilograms that sum to all of it.
            yield return (from, until, Kilograms(inflow.By(until)) - Kilograms(inflow.By(from)));
        }
    }

    /// <summary>What a run draws: beginning and end of each slice in minutes from its start, and the kilograms that go in it.</summary>
    /// <param name="tonnes">All of it.</param>
    /// <param name="minutes">How long the run takes.</param>
    public static IEnumerable<(int From, int Until, long Kilograms)> Gone(double tonnes, int minutes)
    {
        var slices = Math.Clamp(minutes / RunMinutes, 1, MostSlices);
        for (var s = 0; s < slices; s++)
        {
            yield return (minutes * s / slices, minutes * (s + 1) / slices, Kilograms(tonnes * (s + 1) / slices) - Kilograms(tonnes * s / slices));
        }
    }
}
