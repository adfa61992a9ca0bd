using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Mix;

/// <summary>How one property of a mix follows from its parts: a weighted mean, on a scale on which it averages.</summary>
/// <param name="What">The property, in its usual unit.</param>
/// <param name="Weight">What the parts are weighted by.</param>
/// <param name="Scale">The scale on which it averages.</param>
/// <param name="RelaxStep">By how much a limit is relaxed to see what that saves, in the usual unit [design].</param>
/// <param name="Decimals">Decimals shown.</param>
/// <param name="Source">Where the rule stands, or why it holds.</param>
/// <param name="Mark">How well it is known here.</param>
public sealed record BlendRule(Property What, BlendWeight Weight, BlendScale Scale, double RelaxStep, int Decimals, string Source, SourceMark Mark)
{
    // A constant leaves the mean as it is; this one makes a unit of a test weight about one on the scale, as the solvers like it.
    private const double PerReciprocal = 6000;

    /// <summary>The usual unit.</summary>
    public string Unit => Readings.UnitsOf(What)[0];

    /// <summary>Whether a higher value is a lower one on the scale.</summary>
    public bool Falls => Scale != BlendScale.Itself;

    /// <summary>A value on the scale.</summary>
    public double OnScale(double value) => Scale switch
    {
        BlendScale.Liquefaction => 6000 / (value - 50),
        BlendScale.Reciprocal => PerReciprocal / value,
        _ => value,
    };

    /// <summary>A value back from the scale.</summary>
    public double FromScale(double scaled) => Scale switch
    {
        BlendScale.Liquefaction => (6000 / scaled) + 50,
        BlendScale.Reciprocal => PerReciprocal / scaled,
        _ => scaled,
    };

    /// <summary>Change on the scale for one unit of the property at a value; below zero where the scale falls.</summary>
    public double SlopeAt(double value) => Scale switch
    {
        BlendScale.Liquefaction => -6000 / ((value - 50) * (value - 50)),
        BlendScale.Reciprocal => -PerReciprocal / (value * value),
        _ => 1,
    };

    /// <summary>The rule in words.</summary>
    public string Words => (Scale, Weight) switch
    {
        (BlendScale.Liquefaction, _) => "50 + 6000/LN, the liquefaction numbers 6000/(FN − 50) weighted by mass",
        (BlendScale.Reciprocal, _) => "mass over what adds up, volume or count: the reciprocals weighted by mass",
        (_, BlendWeight.DryMatter) => "weighted by dry matter, on one basis",
        _ => "weighted by mass",
    };
}
