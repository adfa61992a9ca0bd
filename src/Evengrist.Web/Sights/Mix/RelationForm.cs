using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using Evengrist.Quantities;
using Evengrist.Web.Sights.Bins;

namespace Evengrist.Web.Sights.Mix;

/// <summary>The fields of a relation as a person types it; nothing typed is lost.</summary>
/// <param name="flour">The flour.</param>
/// <param name="typed">What was typed, by field; null where a field was not sent.</param>
public sealed class RelationForm(string flour, Func<string, string?> typed)
{
    /// <summary>What a field shows.</summary>
    public string this[string field] => typed(field) ?? field switch { "what" => nameof(Property.Protein), "wheat-basis" => "12mb", "flour-basis" => "14mb", _ => "" };

    /// <summary>Reads the relation; what cannot be read is said, and the rest is left for the relation's own check.</summary>
    public (MillRelation? Relation, IReadOnlyList<string> Faults) Read()
    {
        var faults = new List<string>();
        var what = MillRelation.Properties.FirstOrDefault(p => p.ToString() == this["what"]);
        if (what == Property.None)
        {
            faults.Add($"A relation is kept for {string.Join(", ", MillRelation.Properties.Select(p => p.Words()))}; read “{this["what"]}”.");
        }

        var (intercept, slope, uncertainty) = (Number("intercept", "The intercept"), Number("slope", "The slope"), Number("uncertainty", "The ± of the relation"));
        var (least, most) = (TypedNumber.Read("The least wheat it holds for", this["least"], faults), TypedNumber.Read("The most wheat it holds for", this["most"], faults));
        var (ofWheat, ofFlour) = what.NeedsBasis() ? (ReadBasis("wheat"), ReadBasis("flour")) : default;
        return faults.Count > 0 ? (null, faults) : (new MillRelation(flour, new FlourRelation(what, ofWheat, ofFlour, intercept!.Value, slope!.Value, uncertainty!.Value, false, this["source"].Trim()) { LeastWheat = least, MostWheat = most }), []);

        double? Number(string field, string words) => TypedNumber.Read(words, this[field], faults, demanded: true);
        Basis ReadBasis(string of)
        {
            if (!Basis.TryParse(this[$"{of}-basis"], out var basis))
            {
                faults.Add($"The basis of the {of} is dry, 12mb, 14mb or another; read “{this[$"{of}-basis"]}”.");
            }

            return basis;
        }
    }
}
