using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Laboratory.Charts;

/// <summary>What of the ledger can be charted: readings of one property of one place by one method, of a mill unit by the flour it made.</summary>
/// <param name="Place">Code of the place.</param>
/// <param name="Flour">The flour a mill unit made; empty for any other place.</param>
/// <param name="What">Protein, moisture or ash.</param>
/// <param name="Method">The method.</param>
/// <param name="Readings">In the order of time; per cent on 14 % moisture where the property has a basis, else in its own unit.</param>
public sealed record ChartSeries(string Place, string Flour, Property What, string Method, IReadOnlyList<(Instant At, double Value)> Readings)
{
    /// <summary>Readings drawn on a chart [ours].</summary>
    public const int Drawn = 60;

    /// <summary>The newest of its readings, which are drawn and judged.</summary>
    public IReadOnlyList<(Instant At, double Value)> Newest => [.. Readings.TakeLast(Drawn)];

    private static readonly Property[] Charted = [Property.Protein, Property.Moisture, Property.Ash];

    /// <summary>What its limits are kept under.</summary>
    public string Code => FrozenLimits.CodeOf(Place, Flour, What, Method);

    /// <summary>Everything with readings enough to freeze limits from, that with most readings first.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="at">What was read later is left out.</param>
    public static IReadOnlyList<ChartSeries> Of(Book book, Instant at) => Of(book, at, _ => true);

    /// <summary>What is known by a code, case not mattering; null where nothing is, or too few readings.</summary>
    /// <param name="book">The ledger.</param>
    /// <param name="code">As <c>UA WB Protein NIR</c>.</param>
    /// <param name="at">What was read later is left out.</param>
    public static ChartSeries? Find(Book book, string code, Instant at)
    {
        ArgumentNullException.ThrowIfNull(code);
        var wanted = code.Trim();
        return Of(book, at, place => wanted.StartsWith(place + " ", StringComparison.OrdinalIgnoreCase)).FirstOrDefault(s => s.Code.Equals(wanted, StringComparison.OrdinalIgnoreCase));
    }

    private static ChartSeries[] Of(Book book, Instant at, Func<string, bool> isLookedAt)
    {
        ArgumentNullException.ThrowIfNull(book);
        var made = new FlourMade(book);
        return [.. book.Readings.Where(r => r.At <= at && Charted.Contains(r.What) && book[r.On].Kind != PlaceKind.Truck && isLookedAt(book[r.On].Code))
            .GroupBy(r => (Place: book[r.On].Code, Flour: book[r.On].Kind == PlaceKind.MillUnit ? made.At(r.On, r.At) : "", r.What, r.Method)).Where(g => g.Count() >= FrozenLimits.Fewest)
            .Select(g => new ChartSeries(g.Key.Place, g.Key.Flour, g.Key.What, g.Key.Method, [.. g.OrderBy(r => r.At).Select(r => (r.At, On14(r)))]))
            .OrderByDescending(s => s.Readings.Count).ThenBy(s => s.Code, StringComparer.Ordinal)];
    }

    /// <summary>Limits from the readings of a period.</summary>
    /// <param name="period">From when until when.</param>
    /// <param name="wanted">Target and limits of the flour.</param>
    /// <param name="rules">The rules.</param>
    /// <param name="reason">Why.</param>
    public FrozenLimits Frozen((Instant From, Instant Until) period, (double? Target, double? Lower, double? Upper) wanted, IReadOnlyList<RunRule> rules, string reason) => FrozenLimits.Of(
        Place, What, Method, period, [.. Readings.Where(r => r.At >= period.From && r.At < period.Until).Select(r => r.Value)], wanted, rules, reason) with { Flour = Flour };

    private static double On14(Reading reading) => (double)(reading.Basis.IsStated ? reading.Basis.Restated(reading.Value, Basis.At14) : reading.Value);
}
