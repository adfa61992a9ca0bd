using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Watch;

/// <summary>Where readings come from: one method on one instrument, in one unit on one basis.</summary>
/// <param name="Method">How it is read.</param>
/// <param name="Instrument">On which instrument; may be empty.</param>
/// <param name="Unit">In what.</param>
/// <param name="Basis">On which basis; the default where it has none.</param>
public sealed record ReadingSource(string Method, string Instrument, string Unit, Basis Basis)
{
    /// <summary>In words: <c>NIR on NIR-2</c>.</summary>
    public string Words => Instrument.Length > 0 ? $"{Method} on {Instrument}" : Method;

    /// <summary>The source of a reading.</summary>
    public static ReadingSource Of(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return new(reading.Method, reading.Instrument, reading.Unit, reading.Basis);
    }
}
