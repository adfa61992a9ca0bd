namespace Evengrist.Tempering;

/// <summary>A rest that holds at one temperature, carried to another by both diffusion laws.</summary>
/// <remarks>t(T) = t(T₀) · D(T₀)/D(T) [derived]. Neither law is tuned to a mill. Model: docs/model/tempering.md.</remarks>
/// <param name="Hours">The rest at the temperature it holds at, h.</param>
/// <param name="AtCelsius">That temperature, °C.</param>
/// <param name="Celsius">The wheat's temperature, °C.</param>
/// <param name="SoakingHours">The rest by the soaking law, h.</param>
/// <param name="DryingHours">The rest by the drying law, h.</param>
public sealed record RestCorrection(double Hours, double AtCelsius, double Celsius, double SoakingHours, double DryingHours)
{
    /// <summary>Coldest wheat a rest is carried to, °C.</summary>
    public const double LeastCelsius = 0;

    /// <summary>Warmest wheat a rest is carried to, °C.</summary>
    public const double MostCelsius = 50;

    /// <summary>The longer of the two, h: the one to be safe by.</summary>
    public double LongerHours => Math.Max(SoakingHours, DryingHours);

    /// <summary>By how much the two laws differ, h.</summary>
    public double DisagreementHours => Math.Abs(SoakingHours - DryingHours);

    /// <summary>How many times faster the drying law has water move at the wheat's temperature: the laws do not agree on speed, only nearly on what warmth does to it.</summary>
    public double SpeedRatio => DiffusionLaw.Drying.Diffusivity(Celsius) / DiffusionLaw.Soaking.Diffusivity(Celsius);

    /// <summary>What both laws say of a kernel at the wheat's temperature, with where it comes from.</summary>
    public string OfAKernel => FormattableString.Invariant(
        $"Moisture evens out in a kernel in about {DiffusionLaw.Soaking.EveningHours(Celsius):0.0} h by the soaking law and {DiffusionLaw.Drying.EveningHours(Celsius):0.0} h by the drying law (a sphere of 1.5 mm radius, ours); soaked, it takes {100 * DiffusionLaw.Soaking.ShareTaken(Celsius, 1):0} % of the water it can in the first hour (short-time form, from memory).");

    /// <summary>What must be said with it.</summary>
    public IReadOnlyList<string> Remarks =>
    [
        .. DiffusionLaw.All.Where(l => l.IsBeyond(Celsius) || l.IsBeyond(AtCelsius)).Select(l => $"The {l.Name} law was read for {l.LeastCelsius} to {l.MostCelsius} °C: carried on beyond that."),
        OfAKernel,
        "Neither law is tuned to this mill: a rest that was found good here, at its temperature, counts for more.",
    ];

    /// <summary>Carries a rest from one temperature to another.</summary>
    /// <param name="hours">The rest, h; 0 to 72.</param>
    /// <param name="atCelsius">The temperature it holds at, °C; 0 to 50.</param>
    /// <param name="celsius">The wheat's temperature, °C; 0 to 50.</param>
    /// <exception cref="ArgumentException">A number lies outside its range; <see cref="Faults"/> says which.</exception>
    public static RestCorrection Of(double hours, double atCelsius, double celsius)
    {
        if (Faults(hours, atCelsius, celsius) is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(hours));
        }

        double By(DiffusionLaw law) => hours * law.Diffusivity(atCelsius) / law.Diffusivity(celsius);
        return new RestCorrection(hours, atCelsius, celsius, By(DiffusionLaw.Soaking), By(DiffusionLaw.Drying));
    }

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public static IReadOnlyList<string> Faults(double hours, double atCelsius, double celsius) =>
    [
        .. hours is >= 0 and <= 72 ? Array.Empty<string>() : ["The rest lies from 0 to 72 hours."],
        .. atCelsius is >= LeastCelsius and <= MostCelsius ? Array.Empty<string>() : ["The temperature the rest holds at lies from 0 to 50 °C."],
        .. celsius is >= LeastCelsius and <= MostCelsius ? Array.Empty<string>() : ["The wheat's temperature lies from 0 to 50 °C."],
    ];
}
