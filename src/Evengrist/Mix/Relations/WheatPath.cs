using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Mix.Relations;

/// <summary>The way of the wheat from a mix line to the rolls, and when wheat drawn in a stretch is on them: first in first out through every place, by what the ledger moved in and out of it.</summary>
/// <remarks>
/// Where a place has a stirred stage of mass S at its outlet, the stretch begins when 3 S more have passed it (e⁻³, a twentieth of what was in it, is left) and ends when the first of the next wheat comes into it.
/// Page: docs/model/mix.md.
/// </remarks>
public sealed class WheatPath
{
    private const double Washed = 3;
    private readonly IReadOnlyList<(MassCurve In, MassCurve Out, double Stirred)> stages;

    private WheatPath(Place unit, IReadOnlyList<(MassCurve, MassCurve, double)> stages) => (Unit, this.stages) = (unit, stages);

    /// <summary>The mill unit at its end.</summary>
    public Place Unit { get; }

    /// <summary>The way from a line; null where it parts, or comes to no mill unit.</summary>
    public static WheatPath? Of(Book book, PlaceId line)
    {
        ArgumentNullException.ThrowIfNull(book);
        var (stages, here) = (new List<(MassCurve, MassCurve, double)>(), line);
        while (book[here].Kind != PlaceKind.MillUnit)
        {
            Place[] next = [.. book.Connections.Where(c => c.From == here).Select(c => book[c.To]).Where(p => p.Kind is PlaceKind.Leg or PlaceKind.Cleaner or PlaceKind.TemperBin or PlaceKind.MillUnit)];
            if (next.Length != 1 || stages.Count > book.Places.Count)
            {
                return null;
            }

            if (book[here].Kind == PlaceKind.TemperBin)
            {
                stages.Add((Curve(book, here, into: true), Curve(book, here, into: false), book[here].Stirred.Grams));
            }

            here = next[0].Id;
        }

        return new WheatPath(book[here], stages);
    }

    /// <summary>When nothing but wheat drawn in a stretch is on the rolls; null where that time has not come, or there is none.</summary>
    /// <param name="from">Beginning of the draw.</param>
    /// <param name="until">Its end.</param>
    public (Instant From, Instant Until)? OnTheRolls(Instant from, Instant until)
    {
        var (first, last) = ((Instant?)from, (Instant?)until);
        foreach (var (into, outOf, stirred) in stages)
        {
            if (first is not { } begins || last is not { } ends)
            {
                return null;
            }

            first = outOf.When(into.By(begins) + ((Washed - 1) * stirred));
            last = outOf.When(Math.Max(0, into.By(ends) - stirred));
        }

        return first is { } reached && last is { } left && left > reached ? (reached, left) : null;
    }

    private static MassCurve Curve(Book book, PlaceId place, bool into) =>
        new(book.MovementsOf(place).Select(i => book.Movements[i]).Where(m => (into ? m.To : m.From) == place).Select(m => (m.At, m.Until, (double)m.Mass.Grams)));
}
