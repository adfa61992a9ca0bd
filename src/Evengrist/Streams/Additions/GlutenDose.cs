namespace Evengrist.Streams.Additions;

/// <summary>How much gluten brings a flour to a protein. Page: docs/model/additions.md.</summary>
/// <param name="Percent">Share of the blend, per cent: (t − b)/(g − b).</param>
/// <param name="KilogramsPer100Kg">Kilograms to 100 kg of the flour: 100x/(1 − x).</param>
public sealed record GlutenDose(double Percent, double KilogramsPer100Kg)
{
    /// <summary>The dose, or why there is none.</summary>
    /// <param name="basePercent">Protein of the flour, per cent.</param>
    /// <param name="wantedPercent">Protein wanted, the same basis.</param>
    /// <param name="glutenPercent">Protein of the gluten, the same basis.</param>
    public static (GlutenDose? Dose, IReadOnlyList<string> Faults) For(double basePercent, double wantedPercent, double glutenPercent)
    {
        string[] faults =
        [
            .. basePercent is > 0 and <= 40 && wantedPercent is > 0 and < 100 && glutenPercent is > 0 and <= 100 ? Array.Empty<string>() : ["Protein of the flour lies above 0 and at most at 40 %, of the gluten at most at 100 %."],
            .. wantedPercent >= basePercent ? Array.Empty<string>() : [FormattableString.Invariant($"The flour has {basePercent} %, more than the {wantedPercent} % wanted: gluten cannot lower it.")],
            .. wantedPercent < glutenPercent && basePercent < glutenPercent ? Array.Empty<string>() : [FormattableString.Invariant($"The gluten has {glutenPercent} %, which cannot bring the flour to {wantedPercent} %.")],
        ];
        if (faults.Length > 0)
        {
            return (null, faults);
        }

        var x = (wantedPercent - basePercent) / (glutenPercent - basePercent);
        return (new GlutenDose(100 * x, 100 * x / (1 - x)), []);
    }
}
