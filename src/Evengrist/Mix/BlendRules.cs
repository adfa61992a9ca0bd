using System.Collections.Frozen;
using Evengrist.Intake.Grading;
using Evengrist.Ledger;

namespace Evengrist.Mix;

/// <summary>The one table of how each property of a mix follows from its parts. A property that is not in it is refused by name, never averaged in silence.</summary>
/// <remarks>
/// Dough and bake properties (water absorption, stability, loaf volume) are not in it: they do not average. Equations: docs/model/mix.md.
/// </remarks>
public static class BlendRules
{
    private const string Balance = "mass balance, exact";
    private const string ByDefinition = "a share of the mass, by definition";

    private static readonly FrozenDictionary<Property, BlendRule> Table = new BlendRule[]
    {
        new(Property.Moisture, BlendWeight.Mass, BlendScale.Itself, 0.1, 2, Balance, SourceMark.Derived),
        Dry(Property.Protein, 0.1, 2, Balance, SourceMark.Derived),
        Dry(Property.Ash, 0.01, 3, Balance, SourceMark.Derived),
        Dry(Property.WetGluten, 0.5, 1, "nearly a mass balance; mixes wash out a little differently", SourceMark.Memory),
        new(Property.FallingNumber, BlendWeight.Mass, BlendScale.Liquefaction, 10, 0, "liquefaction number, docs/model/quantities.md", SourceMark.Read),
        new(Property.TestWeight, BlendWeight.Mass, BlendScale.Reciprocal, 0.5, 1, "mass over volume, the volumes add up: exact but for a mix that packs a little closer", SourceMark.Derived),
        new(Property.ThousandKernelWeight, BlendWeight.Mass, BlendScale.Reciprocal, 0.5, 1, "kernels add up: exact", SourceMark.Derived),
        new(Property.Hardness, BlendWeight.Mass, BlendScale.Itself, 1, 0, "mean of single kernels, by mass; nearly", SourceMark.Memory),
        Dry(Property.Don, 0.05, 2, Balance + "; lots are uneven", SourceMark.Derived),
        Dry(Property.Aflatoxin, 1, 1, Balance + "; lots are very uneven", SourceMark.Derived),
        Dry(Property.OchratoxinA, 0.5, 1, Balance + "; lots are very uneven", SourceMark.Derived),
        Dry(Property.Zearalenone, 10, 0, Balance + "; lots are uneven", SourceMark.Derived),
        Dry(Property.T2AndHt2, 5, 0, Balance + "; lots are uneven", SourceMark.Derived),
        Share(Property.Dockage), Share(Property.ForeignMaterial), Share(Property.ShrunkenAndBroken), Share(Property.Damaged), Share(Property.HeatDamaged),
        Share(Property.ContrastingClasses), Share(Property.OtherClasses), Share(Property.Vitreous), Share(Property.Sprouted), Share(Property.SeverelySprouted),
        Share(Property.InsectBored), Share(Property.OtherGrains), Share(Property.Ergot),
    }.ToFrozenDictionary(r => r.What);

    /// <summary>Every rule, by the number of its property.</summary>
    public static IReadOnlyList<BlendRule> All { get; } = [.. Table.Values.OrderBy(r => r.What)];

    /// <summary>The rule of a property; null where it has none.</summary>
    public static BlendRule? Of(Property what) => Table.GetValueOrDefault(what);

    private static BlendRule Dry(Property what, double step, int decimals, string source, SourceMark mark) => new(what, BlendWeight.DryMatter, BlendScale.Itself, step, decimals, source, mark);

    private static BlendRule Share(Property what) => new(what, BlendWeight.Mass, BlendScale.Itself, 0.1, 2, ByDefinition, SourceMark.Derived);
}
