using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Methods;

/// <summary>How a property is measured, and how well. Known by its code and the property.</summary>
/// <param name="Code">As in <see cref="Reading.Method"/>: <c>oven 130 °C</c>, <c>NIR</c>.</param>
/// <param name="What">The property.</param>
/// <param name="Unit">The unit it reports in.</param>
/// <param name="Basis">The moisture basis it usually reports on; none for a property without one.</param>
/// <param name="IsReference">Whether others are held against it.</param>
/// <param name="Repeatability">r: how far two results of one laboratory may differ; null until filled.</param>
/// <param name="Reproducibility">R: how far results of two laboratories may differ; null until filled.</param>
/// <param name="OddBeyond">A result farther than this from the last ones of the same place is asked about, unit of the method, above 0; null for never. A question, no limit of quality.</param>
public sealed record LabMethod(
    string Code, Property What, string Unit, Basis Basis, bool IsReference, PrecisionLimit? Repeatability = null, PrecisionLimit? Reproducibility = null, decimal? OddBeyond = null)
{
    /// <summary>Code and property in words: <c>NIR, protein</c>.</summary>
    public string Words => $"{Code}, {What.Words()}";

    /// <summary>One standard uncertainty of a result at a value, from R (R/2.8); null where R is not filled: it is not known then.</summary>
    public decimal? StandardUncertaintyAt(decimal value) => Reproducibility?.StandardDeviationAt(value);

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        var faults = new List<string>();
        if (string.IsNullOrWhiteSpace(Code) || Code.Trim() != Code || Code.Length > 60)
        {
            faults.Add("A method has a code of 1 to 60 characters without space at either end.");
        }

        if (!Enum.IsDefined(What) || What == Property.None)
        {
            faults.Add($"{Code}: say which property it measures.");
            return faults;
        }

        if (!Readings.UnitsOf(What).Contains(Unit))
        {
            faults.Add($"{Words}: it is read in {string.Join(" or ", Readings.UnitsOf(What))}; read \"{Unit}\".");
        }

        if (What.NeedsBasis() != Basis.IsStated)
        {
            faults.Add(What.NeedsBasis() ? $"{Words}: say its moisture basis: dry, 14mb or another." : $"{Words}: it has no moisture basis; write none.");
        }

        faults.AddRange(Repeatability?.Faults($"{Words}, r") ?? []);
        faults.AddRange(Reproducibility?.Faults($"{Words}, R") ?? []);
        if (OddBeyond is <= 0)
        {
            faults.Add($"{Words}: oddBeyond is above 0, or left out.");
        }

        return faults;
    }
}
