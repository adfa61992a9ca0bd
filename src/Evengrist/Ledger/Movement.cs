using System.Globalization;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact: grams went from a place to a place, at one moment or evenly over a span of time.</summary>
/// <param name="Id">The number of the fact.</param>
/// <param name="From">Where it left.</param>
/// <param name="To">Where it went.</param>
/// <param name="Mass">How much, as it lay; above zero (zero only in a correction that voids).</param>
/// <param name="At">When it began.</param>
/// <param name="Until">When it ended; the same as <paramref name="At"/> for a load set down at once. The rate between is even.</param>
public readonly record struct Movement(FactId Id, PlaceId From, PlaceId To, Mass Mass, Instant At, Instant Until) : IComparable<Movement>
{
    /// <summary>Whether it lasted: a flow, not a load set down at once.</summary>
    public bool IsFlow => Until > At;

    /// <summary>Tonnes of it that fall into a span of time, the end left out; a flow counts by its part.</summary>
    /// <param name="from">Beginning of the span.</param>
    /// <param name="until">Its end.</param>
    public double TonnesWithin(Instant from, Instant until) => (double)Mass.Tonnes * (IsFlow
        ? Math.Max(0, (Instant.Min(Until, until) - Instant.Max(At, from)) / (Until - At))
        : At >= from && At < until ? 1 : 0);

    /// <summary>Whether left began before right; of two that began together, the one recorded first.</summary>
    public static bool operator <(Movement left, Movement right) => left.CompareTo(right) < 0;

    /// <summary>Whether left began after right; of two that began together, the one recorded last.</summary>
    public static bool operator >(Movement left, Movement right) => left.CompareTo(right) > 0;

    /// <summary>Whether left did not begin after right.</summary>
    public static bool operator <=(Movement left, Movement right) => left.CompareTo(right) <= 0;

    /// <summary>Whether left did not begin before right.</summary>
    public static bool operator >=(Movement left, Movement right) => left.CompareTo(right) >= 0;

    /// <inheritdoc/>
    public int CompareTo(Movement other) => At != other.At ? At.CompareTo(other.At) : Id.CompareTo(other.Id);

    /// <summary><c>26,340 kg from place 3 to place 17 on 2025-07-09T14:10:00Z</c>.</summary>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Mass} from {From} to {To} on {At}");
}
