using System.Globalization;
using Evengrist.Quantities;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Reads what a person typed and gathers what is wrong with it, by field.</summary>
public sealed class Typed
{
    private readonly List<(string Field, string Fault)> faults = [];
    private readonly List<string> missing = [];

    /// <summary>What was typed and cannot be, by field, in the order of reading.</summary>
    public IReadOnlyList<(string Field, string Fault)> Faults => faults;

    /// <summary>What is still needed before anything can be recorded.</summary>
    public IReadOnlyList<string> Missing => missing;

    /// <summary>Whether all that is needed was typed and can be.</summary>
    public bool IsWhole => faults.Count == 0 && missing.Count == 0;

    /// <summary>The fault of one field; null where there is none.</summary>
    public string? FaultOf(string field) => faults.Where(f => f.Field == field).Select(f => f.Fault).FirstOrDefault();

    /// <summary>Notes a fault.</summary>
    public void Fault(string field, string fault) => faults.Add((field, fault));

    /// <summary>Text without space at either end; noted as missing where there is none and it is needed.</summary>
    public string Text(string? text, string? neededAs = null)
    {
        var clean = (text ?? "").Trim();
        if (clean.Length == 0 && neededAs is not null)
        {
            missing.Add(neededAs);
        }

        return clean;
    }

    /// <summary>A number with a decimal point, a unit after it allowed; null where none was typed or it cannot be.</summary>
    public decimal? Number(string field, string? text, string unit, string? neededAs = null)
    {
        var clean = Text(text, neededAs);
        if (clean.Length == 0)
        {
            return null;
        }

        var bare = clean.EndsWith(unit, StringComparison.OrdinalIgnoreCase) ? clean[..^unit.Length].TrimEnd() : clean;
        bare = bare.Replace(" ", "", StringComparison.Ordinal).Replace("\u00a0", "", StringComparison.Ordinal);
        if (decimal.TryParse(bare, NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var value))
        {
            return value;
        }

        Fault(field, bare.Contains(',', StringComparison.Ordinal)
            ? $"“{clean}” has a comma, which may mean thousands or decimals. Write 38460 or 13.1, with a point before the decimals."
            : $"“{clean}” is no number of {unit}. Write it like {(unit == "kg" ? "38460" : "13.1")}.");
        return null;
    }

    /// <summary>A share of solids: number and basis apart, or both in one text; null where none was typed or it cannot be.</summary>
    public (decimal Value, Basis Basis)? Share(string field, string what, string? text, string unit, string? basisChosen)
    {
        var clean = Text(text);
        if (clean.Length == 0)
        {
            return null;
        }

        // A basis in the text itself counts as stated, as long as it does not speak against the one chosen.
        if (SolidsShare.TryParse(clean, out var whole, out _))
        {
            if (Basis.TryParse(basisChosen, out var other) && other != whole.Basis)
            {
                Fault(field, $"{what}: “{clean}” says {whole.Basis}, and {other} is chosen beside it. Leave one of the two.");
                return null;
            }

            return (whole.Value, whole.Basis);
        }

        if (Number(field, clean, unit) is not { } value)
        {
            return null;
        }

        if (Basis.TryParse(basisChosen, out var basis))
        {
            return (value, basis);
        }

        Fault(field, $"{what} of {value} {unit} has no moisture basis, so nobody can tell what it means. Choose 12mb, 13.5mb, 14mb or dry: what the instrument's report says. Nothing was recorded.");
        return null;
    }
}
