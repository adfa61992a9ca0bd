using Evengrist.Bins;
using Evengrist.Bins.Storage;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Bins;

/// <summary>A round of a bin's temperature cables: what was read at each point. The same round sent again is not recorded again.</summary>
/// <param name="Bin">Code of the wheat bin.</param>
/// <param name="At">When it was read.</param>
/// <param name="Points">Each point once, °C as read.</param>
public sealed record RecordCables(string Bin, Instant At, IReadOnlyList<(CablePoint Point, decimal Celsius)> Points)
{
    private const string Source = "cables";

    /// <summary>One standard uncertainty of a cable sensor, °C; null where nobody stated one.</summary>
    public decimal? StandardUncertainty { get; init; }

    /// <summary>Records the round.</summary>
    /// <exception cref="LedgerRefusal">There is no such wheat bin, no point, a point twice, or a point above the eave, or a temperature that cannot be; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (Points.Count == 0)
        {
            throw Malformed("a round of cables has at least one point.");
        }

        if (Points.GroupBy(p => p.Point).FirstOrDefault(g => g.Count() > 1) is { } twice)
        {
            throw Malformed($"{twice.Key} stands twice in the round. Which of the two holds?");
        }

        if (EaveOf(mill) is { } eave && Points.FirstOrDefault(p => (double)p.Point.Metres > eave) is { Point: { } above })
        {
            throw Malformed(FormattableString.Invariant($"{above} lies above its eave, {eave:0.0} m up by the shape kept for it. Look at the height again, or at the shape."));
        }

        return mill.Record(
            view => view.Book.Named(Bin) is { Kind: PlaceKind.Bin } place ? [.. Drafts(place.Code)] : throw Malformed("only wheat bins have cables."), by, Source, recorded);
    }

    /// <summary>The readings as drafts, for a station that records several things together.</summary>
    public IEnumerable<Measure> Drafts(string code) => Points.Select(p =>
        new Measure($"{code} {At.ToMicros()} {p.Point}", code, At, Property.Temperature, p.Celsius, "°C", default, "cable", p.Point.ToString(), StandardUncertainty));

    // Heights count from the floor, in a hopper from the outlet; where no shape is kept nothing can be said.
    private double? EaveOf(Mill mill) => mill.Ask(view => view.Book.Find(Bin)?.Code) is { } code && mill.Papers(BinPapers.Shape).Newest(code) is { } paper && BinPapers.TryReadShape(paper.Json, out var shape, out _)
        ? shape.WallMetres + shape.HopperMetres : null;

    private LedgerRefusal Malformed(string words) => new(LedgerRule.Malformed, $"{Bin}: {words}") { Place = Bin, At = At };
}
