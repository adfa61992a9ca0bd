using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Prints;

/// <summary>What every print says beside its matter: whose it is, on which clock, in which units, and when it was printed.</summary>
/// <param name="Mill">Name of the mill.</param>
/// <param name="IsDemonstration">Whether the mill is invented.</param>
/// <param name="Zone">The mill's time zone.</param>
/// <param name="Units">Units shown.</param>
/// <param name="Printed">When it was printed.</param>
public sealed record PrintHead(string Mill, bool IsDemonstration, DateTimeZone Zone, UnitSystem Units, Instant Printed)
{
    /// <summary>A moment on the mill's clock.</summary>
    public string Say(Instant moment) => moment.InZone(Zone).LocalDateTime.ToString("d MMM uuuu HH:mm", System.Globalization.CultureInfo.InvariantCulture);
}
