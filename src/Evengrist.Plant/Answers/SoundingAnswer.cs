using Evengrist.Bins.Shape;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>A posed sounding in plain values; uncertainties are one standard uncertainty.</summary>
public sealed record SoundingAnswer(
    double UllageAtWallM, double LevelAtWallM, double VolumeM3, double Tonnes, double? StandardUncertaintyTonnes, IReadOnlyList<PartAnswer> Parts,
    double LooseDensityKgPerM3, string DensityFrom, string ReposeFrom, double PackFactor, string PackFactorFrom, bool PackFactorIsCalibrated, StockCheckAnswer? AgainstTheLedger)
{
    /// <summary>Answers a case.</summary>
    public static Reply<SoundingAnswer> To(SoundingCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        if (posed.Sounding is null)
        {
            return LevelOf(posed);
        }

        return SoundingModel.Of(posed.Shape, posed.Sounding, posed.Density, posed.Pack) switch
        {
            Sounded sounded => new(Of(posed, sounded.LevelMetres, sounded.CubicMetres, sounded.Tonnes) with
            {
                StandardUncertaintyTonnes = sounded.StandardUncertaintyTonnes,
                Parts = [.. sounded.Parts.Select(p => new PartAnswer(p.What, p.Tonnes))],
                AgainstTheLedger = posed.Reckoned is { } reckoned ? StockCheckAnswer.Of(StockCheck.Of((double)reckoned.Tonnes, sounded)) : null,
            }, []),
            NotSounded not => new(null, not.Reasons),
            var other => throw new InvalidOperationException($"A sounding ended as {other.GetType().Name}."),
        };
    }

    private static Reply<SoundingAnswer> LevelOf(SoundingCase posed)
    {
        var volume = (double)posed.Holds!.Value.Tonnes * 1000 / (posed.Density.KilogramsPerCubicMetre * posed.Pack.Value);
        var most = BinVolumeModel.MostOf(posed.Shape, posed.Surface);
        if (volume > most)
        {
            return new(null, [FormattableString.Invariant($"So much does not go in: it needs {volume:0.0} m³, and with that surface the bin holds {most:0.0} m³ ({most * posed.Density.KilogramsPerCubicMetre * posed.Pack.Value / 1000:0.0} t).")]);
        }

        var level = BinVolumeModel.LevelOf(posed.Shape, volume, posed.Surface);
        return new(Of(posed, level, volume, (double)posed.Holds.Value.Tonnes), []);
    }

    private static SoundingAnswer Of(SoundingCase posed, double level, double volume, double tonnes) => new(
        posed.Shape.WallMetres - level, level, volume, tonnes, null, [], posed.Density.KilogramsPerCubicMetre, posed.Density.Words, posed.Shape.ReposeWords(posed.Surface),
        posed.Pack.Value, posed.Pack.Words, posed.Pack.IsCalibrated, null);
}

/// <summary>What one input contributes to the uncertainty.</summary>
public sealed record PartAnswer(string What, double StandardUncertaintyTonnes);

/// <summary>A sounding against the ledger.</summary>
public sealed record StockCheckAnswer(double ReckonedTonnes, double DifferenceTonnes, double PlusMinusTonnes, bool IsWithin, string Verdict)
{
    internal static StockCheckAnswer Of(StockCheck check) => new(
        check.ReckonedTonnes, check.Sounded.Tonnes - check.ReckonedTonnes, 2 * check.Sounded.StandardUncertaintyTonnes, check.IsWithin, check.Verdict);
}
