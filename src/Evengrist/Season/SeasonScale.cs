using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Quantities;

namespace Evengrist.Season;

/// <summary>The scale and weight by which a property of wheats averages in a mix: the table of <see cref="BlendRules"/>, with moisture bases.</summary>
public static class SeasonScale
{
    /// <summary>Whether a property of a mix follows from its parts by a weighted mean.</summary>
    public static bool Averages(Property what) => BlendRules.Of(what) is not null;

    /// <summary>Whether a higher value is a lower one on the scale.</summary>
    public static bool Falls(Property what) => Rule(what).Falls;

    /// <summary>Weight of a t of wheat: its dry share for shares of solids, 1 for the rest.</summary>
    public static double Weight(Property what, double moisturePercent) => Rule(what).Weight == BlendWeight.DryMatter ? 1 - (moisturePercent / 100) : 1;

    /// <summary>A value on the scale on which it averages; shares of solids on dry matter.</summary>
    public static double OnScale(Property what, double value, Basis basis) => Rule(what).OnScale(what.NeedsBasis() ? value * 100 / (100 - (double)basis.MoisturePercent) : value);

    /// <summary>A value back from the scale, on a basis.</summary>
    public static double FromScale(Property what, double scaled, Basis basis) => Rule(what).FromScale(scaled) * (what.NeedsBasis() ? (100 - (double)basis.MoisturePercent) / 100 : 1);

    /// <summary>t·units of the scale, by weight, that a t of mix off by one unit of the property stands for, near a value: 1 for shares of solids in a mix at the moisture of the basis; 6000/(FN − 50)² for falling number.</summary>
    public static double PerUnit(Property what, double near) => Math.Abs(Rule(what).SlopeAt(near));

    /// <summary>A value of a wheat on the scale.</summary>
    public static double OnScale(Property what, SeasonValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return OnScale(what, value.Value, value.Basis);
    }

    private static BlendRule Rule(Property what) => BlendRules.Of(what) ?? throw new ArgumentException($"There is no rule by which {what} averages in a mix.", nameof(what));
}
