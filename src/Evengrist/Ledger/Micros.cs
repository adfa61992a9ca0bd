using NodaTime;

namespace Evengrist.Ledger;

/// <summary>Moments as whole microseconds since 1970-01-01T00:00Z: what is stored, and what reckoning counts in.</summary>
public static class Micros
{
    private const long TicksPerMicrosecond = 10;

    /// <summary>The moment in microseconds, cut down.</summary>
    public static long ToMicros(this Instant instant) => Math.DivRem(instant.ToUnixTimeTicks(), TicksPerMicrosecond, out var rest) - (rest < 0 ? 1 : 0);

    /// <summary>The moment from microseconds.</summary>
    /// <exception cref="OverflowException">Outside the years NodaTime knows.</exception>
    public static Instant ToInstant(long micros) => Instant.FromUnixTimeTicks(micros * TicksPerMicrosecond);

    /// <summary>The moment cut down to the microsecond, so that it reads back the same from any engine.</summary>
    public static Instant Cut(this Instant instant) => ToInstant(instant.ToMicros());
}
