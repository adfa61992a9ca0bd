namespace Evengrist.Streams.Additions;

/// <summary>What a feeder's hopper lost, against the flour that ran. Page: docs/model/additions.md.</summary>
/// <param name="FromKilograms">The hopper before, kg.</param>
/// <param name="UntilKilograms">The hopper after, kg.</param>
/// <param name="FlourTonnes">The flour that ran meanwhile, t.</param>
public sealed record LossInWeight(double FromKilograms, double UntilKilograms, double FlourTonnes)
{
    /// <summary>What was filled in meanwhile, kg.</summary>
    public double FilledKilograms { get; init; }

    /// <summary>The dose that was set, g/t; null where it is not to be compared.</summary>
    public double? SetGramsPerTonne { get; init; }

    /// <summary>One standard uncertainty of a reading of the hopper's scale, kg.</summary>
    public double ScaleUncertainty { get; init; } = 0.05;

    /// <summary>One standard uncertainty of the flour, share of itself.</summary>
    public double FlourUncertaintyShare { get; init; } = 0.005;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. FromKilograms is >= 0 and <= 100_000 && UntilKilograms is >= 0 and <= 100_000 && FilledKilograms is >= 0 and <= 100_000 ? Array.Empty<string>() : ["The hopper weighs from 0 to 100000 kg."],
        .. FromKilograms + FilledKilograms >= UntilKilograms ? Array.Empty<string>() : [FormattableString.Invariant($"The hopper weighs {UntilKilograms} kg after and {FromKilograms + FilledKilograms} kg with what was filled in before: say what was filled in, or swap the two.")],
        .. FlourTonnes is > 0 and <= 1_000_000 ? Array.Empty<string>() : [FormattableString.Invariant($"The flour that ran is above 0 t; got {FlourTonnes}.")],
        .. SetGramsPerTonne is null or (> 0 and <= 1_000_000) ? Array.Empty<string>() : [FormattableString.Invariant($"A dose is above 0 g/t; got {SetGramsPerTonne}.")],
        .. ScaleUncertainty is >= 0 and <= 1000 && FlourUncertaintyShare is >= 0 and <= 0.5 ? Array.Empty<string>() : ["An uncertainty is 0 or more: of the scale to 1000 kg, of the flour to half of itself."],
    ];

    /// <summary>The dose found: loss / flour. u² = 2·u_scale² / flour² + (dose · u_flour)².</summary>
    public FoundDose Found()
    {
        var dose = (FromKilograms + FilledKilograms - UntilKilograms) * 1000 / FlourTonnes;
        var own = Math.Sqrt(2) * ScaleUncertainty * 1000 / FlourTonnes;
        return new FoundDose(dose, Math.Sqrt((own * own) + Math.Pow(dose * FlourUncertaintyShare, 2)), SetGramsPerTonne);
    }
}

/// <summary>A dose as it was found.</summary>
/// <param name="GramsPerTonne">The dose, g/t.</param>
/// <param name="StandardUncertainty">One standard uncertainty, g/t.</param>
/// <param name="SetGramsPerTonne">The dose that was set, g/t; null where it is not to be compared.</param>
public sealed record FoundDose(double GramsPerTonne, double StandardUncertainty, double? SetGramsPerTonne)
{
    /// <summary>By how much of the set dose it is more or less, per cent.</summary>
    public double? OffPercent => 100 * ((GramsPerTonne / SetGramsPerTonne) - 1);

    /// <summary>Whether it lies further off than twice its uncertainty: the feeder, and not the weighing, is to be looked at.</summary>
    public bool? IsOff => SetGramsPerTonne is { } set ? Math.Abs(GramsPerTonne - set) > 2 * StandardUncertainty : null;
}
