using System.Globalization;

namespace Evengrist.Bins.Storage;

/// <summary>What it takes to push air through wheat.</summary>
/// <remarks>ΔP/L = a Q²/ln(1 + b Q), a = 2.70·10⁴ Pa s²/m³, b = 8.77 m² s/m³, Q in m³/s for each m² of floor, 0.0056 to 0.203 [memory: ASABE D272]. Model: docs/model/aeration.md.</remarks>
public static class PressureDrop
{
    /// <summary>The least airflow the equation holds for, m³/(s m²).</summary>
    public const double LeastFlow = 0.0056;

    /// <summary>The greatest airflow the equation holds for, m³/(s m²).</summary>
    public const double MostFlow = 0.203;

    /// <summary>Where it comes from; shown with every figure of it.</summary>
    public const string Source = "equation and constants from memory (ASABE D272), not verified; loosely filled clean wheat";

    private const double A = 2.70e4;
    private const double B = 8.77;

    /// <summary>Pressure drop for each metre of depth, Pa/m; null where the airflow lies outside what the equation holds for.</summary>
    /// <param name="flow">Airflow, m³/(s m²).</param>
    public static double? PascalsPerMetre(double flow) => flow is >= LeastFlow and <= MostFlow ? A * flow * flow / Math.Log(1 + (B * flow)) : null;

    /// <summary>Why there is no figure.</summary>
    /// <param name="flow">Airflow, m³/(s m²).</param>
    public static string Outside(double flow) => string.Create(CultureInfo.InvariantCulture, $"The pressure equation holds from {LeastFlow} to {MostFlow} m³/s for each m²; this would be {flow:0.####}.");
}
