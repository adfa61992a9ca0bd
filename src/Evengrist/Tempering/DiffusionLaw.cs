namespace Evengrist.Tempering;

/// <summary>How fast water moves in wheat at a temperature, as one experiment found it.</summary>
/// <param name="Name">What was measured.</param>
/// <param name="ReferenceDiffusivity">Diffusivity at 25 °C, m²/s.</param>
/// <param name="ActivationJoulesPerMole">Activation energy, J/mol.</param>
/// <param name="LeastCelsius">Least temperature it was read for, °C; null where not known.</param>
/// <param name="MostCelsius">Most temperature it was read for, °C; null where not known.</param>
/// <param name="Source">Where it stands, and what of it is from memory.</param>
public sealed record DiffusionLaw(string Name, double ReferenceDiffusivity, double ActivationJoulesPerMole, double? LeastCelsius, double? MostCelsius, string Source)
{
    /// <summary>The temperature both laws are stated at, °C.</summary>
    public const double ReferenceCelsius = 25;

    /// <summary>Radius of a kernel taken as a sphere, m [ours].</summary>
    public const double KernelRadius = 1.5e-3;

    private const double CaloriesGas = 1.987;
    private const double JoulesGas = 8.314462618;
    private const double Zero = 273.15;

    /// <summary>Soaking: D = 30 exp(−12 300/RT) cm²/s with R = 1.987 cal/(mol K).</summary>
    public static DiffusionLaw Soaking { get; } = new(
        "soaking", 30e-4 * Math.Exp(-12_300 / (CaloriesGas * (ReferenceCelsius + Zero))), 12_300 / CaloriesGas * JoulesGas, null, null,
        "Cereal Chemistry 37:309 (1960), abstract read; that D is in cm²/s is from memory");

    /// <summary>Drying: D = 8.6775·10⁻¹¹ m²/s at 25 °C, activation energy 42.00 kJ/mol, 25 to 55 °C.</summary>
    public static DiffusionLaw Drying { get; } = new(
        "drying", 8.6775e-11, 42_000, 25, 55, "a study of drying wheat from 25 to 55 °C (scielo.br, NfV9msDdSgC6xCrcKX3QB4s), read");

    /// <summary>Both laws there are.</summary>
    public static IReadOnlyList<DiffusionLaw> All { get; } = [Soaking, Drying];

    /// <summary>Diffusivity at a temperature, m²/s: D₂₅ exp(−E/R (1/T − 1/T₂₅)), temperatures in kelvin.</summary>
    public double Diffusivity(double celsius) => ReferenceDiffusivity * Math.Exp(-ActivationJoulesPerMole / JoulesGas * ((1 / (celsius + Zero)) - (1 / (ReferenceCelsius + Zero))));

    /// <summary>Hours in which moisture evens out in a kernel: τ = R²/(π² D), a sphere of 1.5 mm radius.</summary>
    public double EveningHours(double celsius) => KernelRadius * KernelRadius / (Math.PI * Math.PI * Diffusivity(celsius)) / 3600;

    /// <summary>Share of the water a soaked kernel can take that it has taken after a time: (2/√π)(S/V)√(D t), short times only [form from memory]; S/V = 3/R of the sphere, 20 /cm.</summary>
    /// <param name="celsius">Temperature, °C.</param>
    /// <param name="hours">Time, h; at least 0.</param>
    public double ShareTaken(double celsius, double hours) => 2 / Math.Sqrt(Math.PI) * (3 / KernelRadius) * Math.Sqrt(Diffusivity(celsius) * hours * 3600);

    /// <summary>Whether a temperature lies outside what the law was read for.</summary>
    public bool IsBeyond(double celsius) => celsius < LeastCelsius || celsius > MostCelsius;
}
