using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Mix.Sheets;

/// <summary>An open gate of a sheet, with what was known of its wheat as it stood.</summary>
/// <param name="Bin">Code of the bin.</param>
/// <param name="Class">Class of its wheat.</param>
/// <param name="SharePercent">Share that is to leave it, per cent of the mix by mass as it lies, above 0.</param>
public sealed record SheetGate(string Bin, string Class, double SharePercent)
{
    /// <summary>What the gate itself is set to, t/h, where that differs from its share of the rate: the calibration's advice taken.</summary>
    public double? DialTonnesPerHour { get; init; }

    /// <summary>Moisture of the wheat, per cent wet basis.</summary>
    public double MoisturePercent { get; init; } = 12;

    /// <summary>What was known of the wheat that leaves it next.</summary>
    public IReadOnlyList<SheetValue> Values { get; init; } = [];

    /// <summary>As a bin of a mix; what it costs is not told.</summary>
    public MixBin AsBin() => new(Bin, Class, 0)
    {
        MoisturePercent = MoisturePercent,
        Values = Values.DistinctBy(v => v.What).ToDictionary(v => v.What, v => new MixValue(v.Value, v.Basis, v.OwnUncertainty) { Instrument = v.Instrument, InstrumentUncertainty = v.InstrumentUncertainty }),
    };
}

/// <summary>A property of the wheat at a gate, as it was known.</summary>
/// <param name="What">The property.</param>
/// <param name="Value">Its value, usual unit.</param>
/// <param name="Basis">Its basis; none where it has none.</param>
/// <param name="OwnUncertainty">One standard uncertainty of the bin's own.</param>
/// <param name="Instrument">The instrument whose error it shares; empty for none.</param>
/// <param name="InstrumentUncertainty">One standard uncertainty of that.</param>
public sealed record SheetValue(Property What, double Value, Basis Basis = default, double OwnUncertainty = 0, string Instrument = "", double InstrumentUncertainty = 0)
{
    /// <summary>A value of a mix as a sheet keeps it.</summary>
    public static SheetValue Of(Property what, MixValue value)
    {
        ArgumentNullException.ThrowIfNull(value);
        return new SheetValue(what, value.Value, value.Basis, value.OwnUncertainty, value.Instrument, value.InstrumentUncertainty);
    }
}

/// <summary>What a property was expected to be.</summary>
/// <param name="What">The property.</param>
/// <param name="On">Of the wheat or of the flour.</param>
/// <param name="Value">Expected, usual unit.</param>
/// <param name="Basis">Its basis; none where it has none.</param>
/// <param name="StandardUncertainty">One standard uncertainty; ± is twice that.</param>
public sealed record SheetExpected(Property What, LimitOn On, double Value, Basis Basis, double StandardUncertainty)
{
    /// <summary>A prediction as a sheet keeps it.</summary>
    public static SheetExpected Of(Predicted predicted)
    {
        ArgumentNullException.ThrowIfNull(predicted);
        return new SheetExpected(predicted.What, predicted.On, predicted.Value, predicted.Basis, predicted.StandardUncertainty);
    }
}

/// <summary>A limit a sheet was set by.</summary>
/// <param name="What">The property.</param>
/// <param name="On">Of the wheat or of the flour.</param>
/// <param name="Basis">Its basis; none where it has none.</param>
/// <param name="Source">Where it comes from, in words.</param>
public sealed record SheetLimit(Property What, LimitOn On, Basis Basis, string Source)
{
    /// <summary>The least, usual unit; null for none.</summary>
    public double? Least { get; init; }

    /// <summary>The most, usual unit; null for none.</summary>
    public double? Most { get; init; }
}
