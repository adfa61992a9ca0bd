using System.Diagnostics.CodeAnalysis;
using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>What is known of a wheat: a value for each property.</summary>
/// <param name="Values">By property; a property that is missing is not known.</param>
public sealed record SeasonQuality(IReadOnlyDictionary<Property, SeasonValue> Values)
{
    /// <summary>Nothing is known.</summary>
    public static SeasonQuality Unknown { get; } = new(new Dictionary<Property, SeasonValue>());

    /// <summary>The value of a property, where it is known.</summary>
    public bool TryGet(Property what, [NotNullWhen(true)] out SeasonValue? value) => Values.TryGetValue(what, out value);

    /// <summary>The same with one value put in or changed.</summary>
    public SeasonQuality With(Property what, SeasonValue value) => new(new Dictionary<Property, SeasonValue>(Values) { [what] = value });
}
