using Evengrist.Ledger;

namespace Evengrist.Laboratory.Samples;

/// <summary>A line of the sampling plan: where, what for, how often.</summary>
/// <param name="Code">Its own code.</param>
/// <param name="Tests">What the samples are for.</param>
/// <param name="Place">Code of a place; empty where a kind of place is meant.</param>
/// <param name="Kind">A kind of place: every one of it; none where a place is named.</param>
/// <param name="Material">Only where this flour is meant; empty for any.</param>
/// <param name="EveryHours">A sample of each place every so many hours while something runs through it, above 0 to 8784; null for one of each place once it is filled: one of each lot.</param>
public sealed record PlanLine(string Code, IReadOnlyList<SampleTest> Tests, string Place = "", PlaceKind Kind = PlaceKind.None, string Material = "", double? EveryHours = null)
{
    /// <summary>Longest time between samples, h.</summary>
    public const double MostHours = 24 * 366;

    /// <summary>In words: <c>UA every 24 h</c>, <c>every bulk load of WB</c>.</summary>
    public string Words => (Place.Length > 0 ? Place : "every " + Kind.Words()) + (Material.Length > 0 ? " of " + Material : "")
        + (EveryHours is { } hours ? string.Create(System.Globalization.CultureInfo.InvariantCulture, $" every {hours:0.##} h") : Place.Length > 0 ? " once" : "");

    /// <summary>Whether it speaks of a place.</summary>
    public bool Covers(Place place)
    {
        ArgumentNullException.ThrowIfNull(place);
        return (Place.Length > 0 ? place.Code.Equals(Place, StringComparison.OrdinalIgnoreCase) : place.Kind == Kind)
            && (Material.Length == 0 || place.Material.Equals(Material, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Code) || Code.Trim() != Code || Code.Length > LabSample.LongestCode ? [$"A line of the plan has a code of 1 to {LabSample.LongestCode} characters without space at either end."] : Array.Empty<string>(),
        .. (Place.Length > 0) == (Kind != PlaceKind.None) || !Enum.IsDefined(Kind) ? [$"{Code}: name a place or a kind of place, one of both."] : Array.Empty<string>(),
        .. EveryHours is null or (> 0 and <= MostHours) ? Array.Empty<string>() : [$"{Code}: samples are taken every above 0 and up to {MostHours} hours."],
        .. EveryHours is null && Place.Length > 0 ? [$"{Code}: a named place has samples every so many hours; say everyHours."] : Array.Empty<string>(),
        .. SampleTest.Faults(Code, Tests),
    ];
}
