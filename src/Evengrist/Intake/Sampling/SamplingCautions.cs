using System.Globalization;

namespace Evengrist.Intake.Sampling;

/// <summary>What may hurt somebody who samples a vehicle. General cautions: the site's rules, local code and licensed practice come first.</summary>
public static class SamplingCautions
{
    /// <summary>The cautions for a vehicle and a rule, each a sentence.</summary>
    public static IReadOnlyList<string> For(ProbeSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        List<string> cautions =
        [
            "Never climb onto a truck that is running or moving: engine off, brake set, wheels chocked, driver told and out of the way.",
            "Work from the platform or a probe driven from the ground, inside guard rails; never stand on the grain, and never with a hopper or gate open: grain that runs draws a person under in seconds.",
            "Look up before the probe goes up or comes round: power lines, tarpaulin, other people.",
        ];
        if (spec.Pattern.Spread == PointSpread.Stream)
        {
            cautions.Add("Cut the stream with a sampler on a handle from beside the guard; never reach into running grain, and keep clear of the truck while it tips.");
        }
        else
        {
            cautions.Add(string.Create(CultureInfo.InvariantCulture, $"The probe must reach the floor through {spec.DepthMetres:0.##} m of grain, and be opened and shut as its maker says; keep hands off a driven probe."));
        }

        cautions.Add("Where there is a smell of fumigant, or a placard, do not probe: shut the hatch, stand upwind, call the licensed person.");
        cautions.Add("The site's rules and local code come first.");
        return cautions;
    }
}
