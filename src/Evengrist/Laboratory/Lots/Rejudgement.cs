using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Laboratory.Lots;

/// <summary>An instrument that was found to have read wrong over a span.</summary>
/// <param name="Instrument">As readings name it.</param>
/// <param name="What">The property it read wrong.</param>
/// <param name="From">Since when.</param>
/// <param name="Until">Until when, left out.</param>
/// <param name="Bias">How much too high it read, in the unit and basis it was reported in; below 0 for too low.</param>
/// <param name="Uncertainty">Standard uncertainty of <paramref name="Bias"/>, at least 0.</param>
public sealed record WrongSpan(string Instrument, Property What, Instant From, Instant Until, double Bias, double Uncertainty)
{
    /// <summary>What is wrong and what to do, in a sentence; null where nothing is.</summary>
    public string? Fault => string.IsNullOrWhiteSpace(Instrument) ? "Say which instrument, as readings name it."
        : !Enum.IsDefined(What) || What == Property.None ? "Say which property it read wrong."
        : Until <= From ? "The span ends before it begins."
        : !(double.IsFinite(Bias) && Uncertainty >= 0 && double.IsFinite(Uncertainty)) ? "The bias is a number, and its standard uncertainty at least 0." : null;

    /// <summary>Whether a reading is one of those.</summary>
    public bool Holds(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return reading.What == What && reading.At >= From && reading.At < Until && reading.Instrument.Equals(Instrument.Trim(), StringComparison.OrdinalIgnoreCase);
    }

    /// <summary>By how much a reading is to be put right; null where it is none of those.</summary>
    public (double Bias, double Uncertainty)? Off(Reading reading) => Holds(reading) ? (Bias, Uncertainty) : null;
}

/// <summary>A lot whose readings came in part or whole from an instrument that read wrong: its odds as it was judged and as they are.</summary>
/// <param name="Lot">The lot.</param>
/// <param name="Wrong">How many of its readings are wrong.</param>
/// <param name="Before">The line of the specification by the instrument's readings as they were read.</param>
/// <param name="After">The same with the wrong ones put right.</param>
public sealed record Rejudgement(FlourLot Lot, int Wrong, LotResult Before, LotResult After)
{
    /// <summary>The lot judged again; null where none of its readings is wrong, or no line asks for the property.</summary>
    public static Rejudgement? Of(FlourLot lot, IReadOnlyList<Reading> readings, LotJudge judge, WrongSpan wrong)
    {
        ArgumentNullException.ThrowIfNull(judge);
        ArgumentNullException.ThrowIfNull(wrong);
        Reading[] own = [.. readings.Where(r => r.What == wrong.What && r.Instrument.Equals(wrong.Instrument.Trim(), StringComparison.OrdinalIgnoreCase))];
        var count = own.Count(wrong.Holds);
        return count > 0 && judge.Results(own).FirstOrDefault(r => r.Item.What == wrong.What) is { } before
            ? new Rejudgement(lot, count, before, judge.Results(own, wrong.Off).First(r => r.Item.What == wrong.What)) : null;
    }
}
