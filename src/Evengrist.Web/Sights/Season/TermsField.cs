using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Season;

/// <summary>One figure of the terms that can be changed: its field, its words, its value, and the terms with another value in its place.</summary>
/// <param name="Key">Name of the field: <c>demand:WB</c>.</param>
/// <param name="Group">Heading it stands under.</param>
/// <param name="Words">What it is.</param>
/// <param name="Unit">Its unit and basis.</param>
/// <param name="Value">As it stands; null for none.</param>
/// <param name="With">The terms with another value.</param>
public sealed record TermsField(string Key, string Group, string Words, string Unit, double? Value, Func<SeasonTerms, double?, SeasonTerms> With)
{
    /// <summary>The value as a field takes it.</summary>
    public string Text => Value?.ToString("0.####", CultureInfo.InvariantCulture) ?? "";

    /// <summary>Every figure of the terms that the forms offer.</summary>
    public static IReadOnlyList<TermsField> Of(SeasonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return [.. terms.Flours.SelectMany(OfFlour), .. terms.Offers.SelectMany(o => OfOffer(o, terms.Currency)), .. terms.Arrivals.Select(OfArrival), .. terms.CarryOut.Select(OfCarryOut), .. SpreadFields.Of(terms)];
    }

    private static IEnumerable<TermsField> OfFlour(FlourTerms flour)
    {
        SeasonTerms Put(SeasonTerms terms, Func<FlourTerms, FlourTerms> change) => terms with { Flours = [.. terms.Flours.Select(f => f.Code == flour.Code ? change(f) : f)] };
        yield return new($"demand:{flour.Code}", flour.Name, "Demand", "t flour/week", flour.TonnesPerWeek, (terms, v) => Put(terms, f => f with { TonnesPerWeek = v ?? 0 }));
        foreach (var limit in flour.Limits)
        {
            SeasonTerms PutLimit(SeasonTerms terms, Func<LimitTerms, LimitTerms> change) => Put(terms, f => f with { Limits = [.. f.Limits.Select(l => l.What == limit.What ? change(l) : l)] });
            var unit = Readings.UnitsOf(limit.What)[0] + (limit.Basis.IsStated ? " " + limit.Basis : "");
            if (limit.Least is not null)
            {
                yield return new($"least:{flour.Code}:{limit.What}", flour.Name, $"Wheat's {limit.What.Words()}, least", unit, limit.Least, (terms, v) => PutLimit(terms, l => l with { Least = v }));
            }

            if (limit.Most is not null)
            {
                yield return new($"most:{flour.Code}:{limit.What}", flour.Name, $"Wheat's {limit.What.Words()}, most", unit, limit.Most, (terms, v) => PutLimit(terms, l => l with { Most = v }));
            }
        }
    }

    private static IEnumerable<TermsField> OfOffer(OfferTerms offer, string currency)
    {
        SeasonTerms Put(SeasonTerms terms, int tier, Func<TierTerms, TierTerms> change) => terms with
        {
            Offers = [.. terms.Offers.Select(o => o.Code == offer.Code ? o with { Tiers = [.. o.Tiers.Select((t, n) => n == tier ? change(t) : t)] } : o)],
        };
        foreach (var (n, tier) in offer.Tiers.Index())
        {
            var step = n == 0 ? "First" : "Then";
            yield return new($"tonnes:{offer.Code}:{n}", $"Offer {offer.Code} ({offer.WheatClass})", $"{step}, at most", "t/week", tier.TonnesPerWeek, (terms, v) => Put(terms, n, t => t with { TonnesPerWeek = v ?? 0 }));
            yield return new($"price:{offer.Code}:{n}", $"Offer {offer.Code} ({offer.WheatClass})", $"{step}, price", $"{currency}/t", tier.PricePerTonne, (terms, v) => Put(terms, n, t => t with { PricePerTonne = v ?? 0 }));
        }
    }

    private static TermsField OfArrival(ArrivalTerms arrival) => new(
        $"arrival:{arrival.Code}", "Expected wheat", $"{arrival.Code}, {arrival.First.ToString("d MMM", CultureInfo.InvariantCulture)} to {arrival.Last.ToString("d MMM uuuu", CultureInfo.InvariantCulture)}", "t in all", arrival.Tonnes,
        (terms, v) => terms with { Arrivals = [.. terms.Arrivals.Select(a => a.Code == arrival.Code ? a with { Tonnes = v ?? 0 } : a)] });

    private static TermsField OfCarryOut(Evengrist.Season.CarryOut left) => new(
        $"left:{left.WheatClass}", "Left at the end", left.WheatClass.Length > 0 ? left.WheatClass : "All wheat", "t, at least", left.LeastTonnes,
        (terms, v) => terms with { CarryOut = [.. terms.CarryOut.Select(c => c.WheatClass == left.WheatClass ? c with { LeastTonnes = v ?? 0 } : c)] });
}
