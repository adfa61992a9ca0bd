using System.Diagnostics.CodeAnalysis;
using System.Text.Json;
using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix.Relations;

/// <summary>How one flour follows from its wheat, as a mill keeps it: a paper by version. Page: docs/model/mix.md.</summary>
/// <param name="Flour">Code of the flour.</param>
/// <param name="Relation">The line.</param>
public sealed record MillRelation(string Flour, FlourRelation Relation)
{
    /// <summary>Kind of the paper.</summary>
    public const string Kind = "flour-relation";

    private const int LongestText = 400;
    private static readonly JsonSerializerOptions Options = StrictJson.Options();

    /// <summary>Properties that can have one: shares of solids that carry over, and the falling number, whose line is in seconds.</summary>
    public static IReadOnlyList<Property> Properties { get; } = [Property.Protein, Property.Ash, Property.WetGluten, Property.FallingNumber, Property.Don];

    /// <summary>The code of its paper: flour and property.</summary>
    public string Code => CodeOf(Flour, Relation.What);

    /// <summary>The code of the paper of a flour and property.</summary>
    public static string CodeOf(string flour, Property what) => $"{flour} {what}";

    /// <summary>Whether runs of a property can be fitted: falling numbers do not average over a run's readings, and malt moves the flour's.</summary>
    public static bool CanBeFitted(Property what) => what.NeedsBasis();

    /// <summary>Every fault, each a sentence that says what to do; empty where there is none.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Flour) ? ["Say which flour it is of."] : Array.Empty<string>(),
        .. Properties.Contains(Relation.What) ? Array.Empty<string>() : [$"A relation is kept for {string.Join(", ", Properties.Select(p => p.Words()))}."],
        .. MixSpecCheck.OfRelation(Relation),
        .. Properties.Contains(Relation.What) && !Relation.What.NeedsBasis() && (Relation.WheatBasis.IsStated || Relation.FlourBasis.IsStated) ? [$"{Relation.What.Words()} has no moisture basis: leave it out."] : Array.Empty<string>(),
        .. string.IsNullOrWhiteSpace(Relation.Source) ? ["Say where it comes from: runs, a book, a person."] : Array.Empty<string>(),
        .. Relation.Source?.Length > LongestText ? [FormattableString.Invariant($"Where it comes from is said in {LongestText} letters or fewer.")] : Array.Empty<string>(),
        .. Relation.LeastWheat > Relation.MostWheat || Relation is { LeastWheat: { } least } && !double.IsFinite(least) || Relation is { MostWheat: { } most } && !double.IsFinite(most) ? ["The wheat it holds for runs from a least to a most."] : Array.Empty<string>(),
    ];

    /// <summary>As the paper says it.</summary>
    public string ToJson() => JsonSerializer.Serialize(this, Options);

    /// <summary>Reads a paper and checks it.</summary>
    /// <param name="json">The text.</param>
    /// <param name="relation">The relation; null where there is a fault.</param>
    /// <param name="faults">Each fault a sentence; empty where there is none.</param>
    public static bool TryRead(string json, [NotNullWhen(true)] out MillRelation? relation, out IReadOnlyList<string> faults) =>
        StrictJson.TryRead(json, Options, r => r is null ? ["A relation is an object with a flour and its line; read null."] : r.Faults(), out relation, out faults);
}
