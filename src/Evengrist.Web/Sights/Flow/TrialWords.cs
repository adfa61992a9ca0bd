using System.Globalization;
using Evengrist.Milling.OnPaper;
using Evengrist.Plant.Answers;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Flow;

/// <summary>Figures of a trial in words; every ± is k = 2.</summary>
public static class TrialWords
{
    /// <summary>Basis on which ash and protein are shown.</summary>
    public static Basis Shown => Basis.At14;

    /// <summary>A share of the dry matter on the basis shown.</summary>
    public static Estimate OnBasis(Estimate dry)
    {
        ArgumentNullException.ThrowIfNull(dry);
        return new Estimate(dry.Value / Shown.ToDry, dry.Uncertainty / Shown.ToDry);
    }

    /// <summary>A figure, as 12.3 ± 0.4.</summary>
    public static string Value(PlusMinus of, int decimals) => of is null ? "" : $"{Number(of.Value, decimals)} ± {Number(of.Half, decimals)}";

    /// <summary>A figure, as 12.3 ± 0.4.</summary>
    public static string Value(Estimate of, int decimals) => of is null ? "" : Value(Told(of), decimals);

    /// <summary>A change, as +0.3 ± 0.1.</summary>
    public static string Delta(PlusMinus of, int decimals) => of is null ? "" : $"{Signed(of.Value, decimals)} ± {Number(of.Half, decimals)}";

    /// <summary>A change, as +0.3 ± 0.1.</summary>
    public static string Delta(Estimate of, int decimals) => of is null ? "" : Delta(Told(of), decimals);

    /// <summary>A number with its sign.</summary>
    public static string Signed(double value, int decimals) => Math.Round(value, decimals) is var rounded && rounded == 0 ? Number(0, decimals) : (rounded > 0 ? "+" : "−") + Number(Math.Abs(rounded), decimals);

    /// <summary>A number.</summary>
    public static string Number(double value, int decimals) => value.ToString("N" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static PlusMinus Told(Estimate of) => new(of.Value, 2 * of.Uncertainty);
}
