using System.Globalization;

namespace Evengrist.Quantities;

/// <summary>The moisture at which a share of solids (protein, ash, gluten, toxin …) is stated: dry, 12 % moisture, 14 % moisture …</summary>
/// <remarks>
/// <para>Unit: per cent moisture, wet basis, of the material the share is stated on. Range: 0 ≤ moisture &lt; 100. Dry basis is 0.</para>
/// <para>The default value is not a basis: <see cref="MoisturePercent"/> throws on it, so that a bare per cent cannot pass.</para>
/// </remarks>
public readonly record struct Basis : IComparable<Basis>
{
    private readonly bool stated;
    private readonly decimal moisturePercent;

    private Basis(decimal moisturePercent)
    {
        this.moisturePercent = moisturePercent;
        stated = true;
    }

    /// <summary>Dry matter.</summary>
    public static Basis Dry => new(0m);

    /// <summary>12 % moisture, the usual basis for wheat protein in North America.</summary>
    public static Basis At12 => new(12m);

    /// <summary>13.5 % moisture, the Canadian basis for wheat protein.</summary>
    public static Basis At13Point5 => new(13.5m);

    /// <summary>14 % moisture, the usual basis for flour protein and ash in North America.</summary>
    public static Basis At14 => new(14m);

    /// <summary>Whether a basis was stated at all; false only for the default value.</summary>
    public bool IsStated => stated;

    /// <summary>Moisture of the basis, per cent wet basis; 0 means dry.</summary>
    /// <exception cref="InvalidOperationException">No basis was stated (the default value).</exception>
    public decimal MoisturePercent => stated
        ? moisturePercent
        : throw new InvalidOperationException("No basis is stated: say dry, 12mb, 14mb or another moisture basis.");

    /// <summary>100/(100 − basis): a share of solids on the basis times this is the share of the dry matter.</summary>
    /// <exception cref="InvalidOperationException">No basis was stated (the default value).</exception>
    public double ToDry => 100 / (100 - (double)MoisturePercent);

    /// <summary>A value stated on this basis, carried to another, not rounded: X (100 − M_t)/(100 − M_i). Exact on the same basis.</summary>
    /// <exception cref="InvalidOperationException">One of the two is not stated.</exception>
    public decimal Restated(decimal value, Basis wanted) => this == wanted ? value : value * (100m - wanted.MoisturePercent) / (100m - MoisturePercent);

    /// <summary>A basis at the given moisture, per cent wet basis, 0 ≤ moisture &lt; 100.</summary>
    /// <exception cref="ArgumentOutOfRangeException">The moisture lies outside the range.</exception>
    public static Basis At(decimal moisturePercent) => moisturePercent is >= 0m and < 100m
        ? new Basis(moisturePercent)
        : throw new ArgumentOutOfRangeException(nameof(moisturePercent), moisturePercent, "A moisture basis lies from 0 up to, not including, 100 %.");

    /// <summary>Whether <paramref name="left"/> is drier than <paramref name="right"/>.</summary>
    public static bool operator <(Basis left, Basis right) => left.CompareTo(right) < 0;

    /// <summary>Whether <paramref name="left"/> is moister than <paramref name="right"/>.</summary>
    public static bool operator >(Basis left, Basis right) => left.CompareTo(right) > 0;

    /// <summary>Whether <paramref name="left"/> is at most as moist as <paramref name="right"/>.</summary>
    public static bool operator <=(Basis left, Basis right) => left.CompareTo(right) <= 0;

    /// <summary>Whether <paramref name="left"/> is at least as moist as <paramref name="right"/>.</summary>
    public static bool operator >=(Basis left, Basis right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Basis other) => MoisturePercent.CompareTo(other.MoisturePercent);

    /// <summary>Reads <c>dry</c>, <c>12mb</c>, <c>13.5mb</c> …; case and spaces do not matter.</summary>
    public static bool TryParse(string? text, out Basis basis)
    {
        basis = default;
        var word = (text ?? "").Replace(" ", "", StringComparison.Ordinal);
        if (word.Equals("dry", StringComparison.OrdinalIgnoreCase) || word.Equals("db", StringComparison.OrdinalIgnoreCase))
        {
            basis = Dry;
            return true;
        }

        if (!word.EndsWith("mb", StringComparison.OrdinalIgnoreCase)
            || !decimal.TryParse(word[..^2], NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out var moisture)
            || moisture is < 0m or >= 100m)
        {
            return false;
        }

        basis = At(moisture);
        return true;
    }

    /// <summary><c>dry</c> or the moisture followed by <c>mb</c>: <c>12mb</c>, <c>13.5mb</c>; <c>no basis</c> for the default value.</summary>
    public override string ToString() => !stated ? "no basis"
        : moisturePercent == 0m ? "dry"
        : moisturePercent.ToString("0.###", CultureInfo.InvariantCulture) + "mb";
}
