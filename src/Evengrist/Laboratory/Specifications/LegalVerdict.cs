using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Specifications;

/// <summary>Whether a flour keeps one legal rule by its results, compared unrounded and without guard band.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Keeps">Whether it is kept; null where a result is wanting.</param>
/// <param name="Words">What was compared, with units and basis.</param>
public sealed record LegalVerdict(LegalRule Rule, bool? Keeps, string Words)
{
    /// <summary>Holds results against a rule.</summary>
    /// <param name="rule">The rule.</param>
    /// <param name="result">The lot's result of a property on a basis, as it lies where the basis is none; null where there is none.</param>
    public static LegalVerdict Of(LegalRule rule, Func<Property, Basis, decimal?> result)
    {
        ArgumentNullException.ThrowIfNull(rule);
        ArgumentNullException.ThrowIfNull(result);
        return rule.What is not { } what ? new(rule, null, "not judged by a reading: held by the recipe and the sieve")
            : rule.IsAshByProtein ? Ash(rule, result(Property.Protein, Basis.Dry), result(Property.Ash, Basis.Dry))
            : result(what, rule.Basis) is { } found ? new(rule, !(found < rule.Lower) && !(found > rule.Upper), string.Create(CultureInfo.InvariantCulture, $"{found:0.###} {rule.Unit} against {Limit(rule)}"))
            : new(rule, null, $"no result of {what.Words()}");
    }

    private static string Limit(LegalRule rule) => rule.Upper is { } most ? FormattableString.Invariant($"at most {most} {rule.Unit}") : FormattableString.Invariant($"at least {rule.Lower} {rule.Unit}");

    private static LegalVerdict Ash(LegalRule rule, decimal? proteinDry, decimal? ashDry)
    {
        if (proteinDry is not { } protein || ashDry is not { } ash)
        {
            return new(rule, null, $"no result of {(proteinDry is null ? "protein" : "ash")}");
        }

        var most = FlourAshLimit.For(SolidsShare.Percent(protein, Basis.Dry));
        return new(rule, FlourAshLimit.IsMet(SolidsShare.Percent(protein, Basis.Dry), SolidsShare.Percent(ash, Basis.Dry)),
            string.Create(CultureInfo.InvariantCulture, $"ash {ash:0.000} % dry against at most {most.DryValue:0.000} % dry ({most.ValueOn(Basis.At14):0.000} % 14mb) at protein {protein:0.00} % dry"));
    }
}
