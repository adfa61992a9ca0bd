namespace Evengrist.Milling.Sifting;

/// <summary>How fast a particle falls in still air: what a purifier's air has to match to lift it.</summary>
public static class TerminalVelocity
{
    private const double Gravity = 9.80665;
    private const double AirDensity = 1.2;
    private const double AirViscosity = 1.81e-5;

    /// <summary>A round piece, m/s, by the drag of Schiller and Naumann, 24/Re (1 + 0.15 Re^0.687).</summary>
    /// <param name="micrometres">Size, µm; above 0.</param>
    /// <param name="density">Density, kg/m³; endosperm about 1450, germ 1250 [memory].</param>
    public static double Round(double micrometres, double density)
    {
        var size = micrometres * 1e-6;
        var speed = size * size * (density - AirDensity) * Gravity / (18 * AirViscosity);
        for (var i = 0; i < 60; i++)
        {
            var reynolds = Math.Max(1e-9, AirDensity * speed * size / AirViscosity);
            var drag = 24 / reynolds * (1 + (0.15 * Math.Pow(reynolds, 0.687)));
            speed = 0.5 * (speed + Math.Sqrt(4 * size * (density - AirDensity) * Gravity / (3 * drag * AirDensity)));
        }

        return speed;
    }

    /// <summary>A flake falling broadside, m/s: v = √(2 t ρ g / (ρ_air C)), C 1.5 [memory].</summary>
    /// <param name="thicknessMicrometres">Thickness, µm; bran 60 to 100 [memory].</param>
    /// <param name="density">Density, kg/m³; bran about 1250 [memory].</param>
    public static double Flake(double thicknessMicrometres, double density) => Math.Sqrt(2 * thicknessMicrometres * 1e-6 * density * Gravity / (AirDensity * 1.5));
}
