using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Methods;

/// <summary>A check sample read on an instrument.</summary>
/// <param name="Instrument">Code of the instrument.</param>
/// <param name="At">When it was read.</param>
/// <param name="What">The property.</param>
/// <param name="Known">What the sample is known to have, first unit of the property, on the basis the instrument reads on.</param>
/// <param name="Found">Readings of it, one or more.</param>
/// <param name="Sample">Number or name of the check sample.</param>
/// <param name="Remark">Anything to remember; may be empty.</param>
public sealed record InstrumentCheck(string Instrument, Instant At, Property What, decimal Known, IReadOnlyList<decimal> Found, string Sample, string Remark = "")
{
    /// <summary>The kind of paper checks are kept as, one version for each check of an instrument.</summary>
    public const string PaperKind = "lab-check";

    /// <summary>Mean reading less what is known, in the unit.</summary>
    public decimal Off => Found.Average() - Known;

    /// <summary>Whether it lies within a tolerance; a mean on the tolerance does.</summary>
    public bool Passes(CheckTolerance tolerance)
    {
        ArgumentNullException.ThrowIfNull(tolerance);
        return Math.Abs(Off) <= tolerance.Within;
    }

    /// <summary>In words: <c>protein of CS-7: 11.92 found, 11.90 known</c>.</summary>
    public string Words => string.Create(CultureInfo.InvariantCulture, $"{What.Words()} of {Sample}: {Found.Average():0.###} found, {Known:0.###} known");

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.Write(this);

    /// <summary>Reads a check and looks whether it can be.</summary>
    /// <param name="json">The text.</param>
    /// <param name="check">The check; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out InstrumentCheck? check, out IReadOnlyList<string> faults) => LabJson.TryRead(json, c => c.Faults(), out check, out faults);

    /// <summary>What is wrong with it by itself, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (!Enum.IsDefined(What) || What == Property.None)
        {
            return ["Say which property of the check sample was read."];
        }

        var (unit, basis) = (Readings.UnitsOf(What)[0], What.NeedsBasis() ? Quantities.Basis.Dry : default);
        return
        [
            .. string.IsNullOrWhiteSpace(Instrument) ? ["Say which instrument was checked."] : Array.Empty<string>(),
            .. string.IsNullOrWhiteSpace(Sample) ? ["Say which check sample was read: its number or name."] : Array.Empty<string>(),
            .. Found.Count is >= 1 and <= 20 ? Array.Empty<string>() : ["Give 1 to 20 readings of the check sample."],
            .. Found.Append(Known).Distinct().Select(v => Readings.Fault(What, v, unit, basis)).OfType<string>(),
        ];
    }
}
