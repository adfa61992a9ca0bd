using System.Globalization;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>Marks what leaves a place during a span of time, so that it can be followed by itself.</summary>
/// <param name="Place">The place: a bin, a mill unit, a line.</param>
/// <param name="From">Beginning of the span.</param>
/// <param name="Until">End of the span, not included; after <paramref name="From"/>.</param>
public sealed record Mark(PlaceId Place, Instant From, Instant Until)
{
    /// <inheritdoc/>
    public override string ToString() => string.Create(CultureInfo.InvariantCulture, $"{Place} from {From} until {Until}");
}
