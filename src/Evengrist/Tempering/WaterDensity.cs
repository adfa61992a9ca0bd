namespace Evengrist.Tempering;

/// <summary>Density of clean water at the pressure of the air.</summary>
public static class WaterDensity
{
    /// <summary>Kilograms in a litre at a temperature, 0 to 60 °C.</summary>
    /// <remarks>Formula: Kell, J. Chem. Eng. Data 20:97 (1975), recalled; tests hold it to the printed tables of water's density within 0.01 kg/m³.</remarks>
    /// <exception cref="ArgumentOutOfRangeException">Outside 0 to 60 °C.</exception>
    public static double KilogramsPerLitre(double celsius)
    {
        if (celsius is not (>= 0 and <= 60))
        {
            throw new ArgumentOutOfRangeException(nameof(celsius), celsius, "The water's temperature lies from 0 to 60 °C.");
        }

        var t = celsius;
        var top = 999.83952 + (t * (16.945176 + (t * (-7.9870401e-3 + (t * (-46.170461e-6 + (t * (105.56302e-9 - (t * 280.54253e-12)))))))));
        return top / (1 + (16.879850e-3 * t)) / 1000;
    }
}
