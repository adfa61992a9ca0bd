using Evengrist.Ledger;
using Evengrist.Mix;
using Evengrist.Mix.Relations;
using Evengrist.Records.Mix;

namespace Evengrist.Web.Sights.Mix;

/// <summary>A property of the flour in a question for a mix: its limit, and how it follows from the wheat.</summary>
/// <param name="What">The property.</param>
/// <param name="Kept">The relation the mill keeps; null where it keeps none.</param>
/// <param name="Usual">What the fields show before anything is typed: the relation kept, else one from memory.</param>
/// <param name="Relation">The relation as asked.</param>
/// <param name="Limit">The limit as asked; without ends where none was.</param>
public sealed record AskedFlour(Property What, KeptRelation? Kept, FlourRelation Usual, FlourRelation Relation, MixLimit Limit)
{
    // Protein of the flour at 14mb for wheat at 12mb, where the mill keeps none: from memory, and said so wherever it is used.
    private static readonly FlourRelation FromMemory = new(Property.Protein, RelationPoint.WheatBasis, RelationPoint.FlourBasis, -1.3, 1, 0.3, false, "from memory");

    /// <summary>Whether there is a limit on it.</summary>
    public bool IsLimited => Limit.Ends.Count > 0;

    /// <summary>Reads the fields of every property that has a relation, protein always.</summary>
    /// <param name="kept">The relations kept for the flour.</param>
    /// <param name="read">Reads a field: its key, its words, what stands for one that is missing.</param>
    /// <param name="confidence">Chance with which each limit is to be kept, 0 to 1; null for the mean.</param>
    public static IReadOnlyList<AskedFlour> Of(IReadOnlyList<KeptRelation> kept, Func<string, string, double?, double?> read, double? confidence)
    {
        ArgumentNullException.ThrowIfNull(kept);
        ArgumentNullException.ThrowIfNull(read);
        return [.. kept.Select(k => k.Relation.Relation.What).Append(Property.Protein).Distinct().Order().Select(what => Of(what, kept.FirstOrDefault(k => k.Relation.Relation.What == what), read, confidence))];
    }

    /// <summary>The name of a field: <c>flour-least:Protein</c>.</summary>
    public string Field(string name) => $"flour-{name}:{What}";

    private static AskedFlour Of(Property what, KeptRelation? kept, Func<string, string, double?, double?> read, double? confidence)
    {
        var usual = kept is null ? FromMemory : kept.Relation.Relation with { Source = $"kept by {kept.By}, version {kept.Version}; {kept.Relation.Relation.Source}" };
        var words = what.Words();
        double? Read(string name, string says, double? otherwise) => read($"flour-{name}:{what}", says, otherwise);

        // The fields show four decimals: sent back as they were shown they change nothing.
        double Figure(string name, string says, double otherwise) => Read(name, says, otherwise) is { } typed && Math.Abs(typed - otherwise) > 0.00005 ? typed : otherwise;
        var asked = usual with
        {
            Intercept = Figure("intercept", $"{words} of the flour, intercept", usual.Intercept), Slope = Figure("slope", $"{words} of the flour, slope", usual.Slope), Uncertainty = Figure("uncertainty", $"± of the {words} of the flour", usual.Uncertainty),
        };
        return new AskedFlour(
            what, kept, usual, asked == usual ? usual : asked with { IsFitted = false, Source = "as typed for this mix", LeastWheat = null, MostWheat = null },
            new MixLimit(what) { On = LimitOn.Flour, Basis = usual.FlourBasis, Least = Read("least", $"{words} of the flour, least", null), Most = Read("most", $"{words} of the flour, most", null), Confidence = confidence });
    }
}
