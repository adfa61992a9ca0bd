using Evengrist.Quantities;

namespace Evengrist.Intake;

/// <summary>The rules contract terms keep as data, so that a settlement cannot go wrong for their sake.</summary>
internal static class TermsCheck
{
    private const int MostCode = 60;
    private const decimal MostPrice = 1_000_000m;

    public static IEnumerable<string> Of(ContractTerms terms)
    {
        if (string.IsNullOrWhiteSpace(terms.Code) || terms.Version < 1)
        {
            yield return "A contract needs a code and a version from 1.";
        }

        if (terms.Code.Length > MostCode || terms.Code.Any(c => char.IsWhiteSpace(c) || char.IsControl(c)))
        {
            yield return $"A contract's code has no blank and at most {MostCode} characters: tickets name it with its version. Its name may have blanks.";
        }

        if (terms.Base.Per == PriceUnit.None || terms.Base.Money.Amount is <= 0m or > MostPrice)
        {
            yield return FormattableString.Invariant($"The base price lies above 0 and not above {MostPrice}, with a currency, for a bushel or a tonne.");
            yield break;
        }

        if (terms.DockageDecimals is < 0 or > 6 || terms.MoistureDecimals is < 0 or > 6)
        {
            yield return "Dockage and moisture are recorded at 0 to 6 decimals.";
        }

        if (terms.Until < terms.From)
        {
            yield return FormattableString.Invariant($"The contract ends on {terms.Until:R} before it begins on {terms.From:R}.");
        }

        foreach (var fault in terms.Scales.SelectMany(s => s.Faults()))
        {
            yield return fault;
        }

        foreach (var scale in terms.Scales.Where(s => s.Currency is { } currency && currency != terms.Base.Money.Currency))
        {
            yield return $"Scale {scale.Title} is in {scale.Currency}, the base price in {terms.Base.Money.Currency}: agree on one.";
        }

        foreach (var charge in terms.Observed ?? [])
        {
            if (string.IsNullOrWhiteSpace(charge.What) || Math.Abs(charge.Effect) > MostPrice || terms.Observed!.Count(o => o.IsAbout(charge.What)) > 1)
            {
                yield return FormattableString.Invariant($"A charge for what is observed has a word of its own and not more than {MostPrice}; read \"{charge.What}\" with {charge.Effect}.");
            }
        }

        foreach (var code in terms.Scales.GroupBy(s => s.Code, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => g.Key))
        {
            yield return $"Scale {code} stands in the contract twice.";
        }
    }
}
