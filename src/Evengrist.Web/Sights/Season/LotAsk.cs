using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Season;
using Evengrist.Season.Lots;
using Evengrist.Season.Terms;

namespace Evengrist.Web.Sights.Season;

/// <summary>An offered lot as a person typed it.</summary>
/// <param name="Fields">The fields.</param>
/// <param name="Lot">The lot as the terms see it; null where nothing was asked yet or something cannot be read.</param>
/// <param name="Supposed">What was not given and is supposed, each a sentence.</param>
public sealed record LotAsk(TypedFields Fields, LotSpec? Lot, IReadOnlyList<string> Supposed)
{
    /// <summary>What is asked of a lot beside its protein: key, words, unit, property, basis.</summary>
    public static IReadOnlyList<(string Key, Property What, string Unit, Basis Basis)> Others { get; } =
    [
        ("falling", Property.FallingNumber, "s", default), ("weight", Property.TestWeight, "kg/hL", default), ("ash", Property.Ash, "% dry", Basis.Dry), ("gluten", Property.WetGluten, "% 14mb", Basis.At14),
    ];

    /// <summary>Reads the fields.</summary>
    /// <param name="terms">The terms the year goes by.</param>
    /// <param name="spec">The year.</param>
    /// <param name="typed">What was typed, by field.</param>
    public static LotAsk Of(SeasonTerms terms, SeasonSpec spec, Func<string, string?> typed)
    {
        ArgumentNullException.ThrowIfNull(terms);
        ArgumentNullException.ThrowIfNull(spec);
        var fields = new TypedFields(typed);
        var wheatClass = fields.Text("class", spec.Offers.Select(o => o.Wheat.WheatClass).FirstOrDefault() ?? "");
        var when = fields.Day("when", "There on", spec.Start);
        if (!fields.Has("tonnes"))
        {
            foreach (var key in (string[])["tonnes", "protein", "asked", .. Others.Select(o => o.Key)])
            {
                fields.Text(key, "");
            }

            fields.Number("spread", "Spread", 0.3);
            fields.Number("moisture", "Moisture", 12);
            return new LotAsk(fields, null, []);
        }

        var values = new Dictionary<Property, SeasonValue> { [Property.Protein] = new(fields.Needed("protein", "Protein"), fields.Number("spread", "Spread of protein") ?? 0, Basis.At12) };
        foreach (var (key, what, _, basis) in Others)
        {
            if (fields.Number(key, Upper(what.Words())) is { } value)
            {
                values[what] = new SeasonValue(value, 0, basis);
            }
        }

        if (when < spec.Start || when >= spec.End)
        {
            fields.Fault($"There on {when:uuuu-MM-dd}: the year goes from {spec.Start:uuuu-MM-dd} to {spec.End.PlusDays(-1):uuuu-MM-dd}; give a day of it.");
        }

        var read = new SeasonWheat("the lot", wheatClass, 0, fields.Number("moisture", "Moisture") ?? 12, new SeasonQuality(values));
        var lot = new LotSpec(terms.Seen(read), fields.Needed("tonnes", "Tonnes"), spec.Periods.TakeWhile(p => p.End <= when).Count()) { AskedPerTonne = fields.Number("asked", "Price asked") };
        if (fields.Faults.Count == 0)
        {
            foreach (var fault in LotFaults.Of(lot, spec))
            {
                fields.Fault($"{Upper(fault.Where)}: {fault.What}");
            }
        }

        return new LotAsk(fields, fields.Faults.Count == 0 ? lot : null, [.. UsualTerms.Missing(read, terms.Usual)
            .Select(q => FormattableString.Invariant($"Its {q.What.Words()} was not given: the usual {q.Value:0.##} {Readings.UnitsOf(q.What)[0]} of {wheatClass} is supposed."))]);
    }

    private static string Upper(string words) => words.Length > 0 ? char.ToUpperInvariant(words[0]) + words[1..] : words;
}
