using Evengrist.Quantities;

namespace Evengrist.Bins.Shape;

/// <summary>Tonnes from a tape: volume by the bin's shape × loose density × pack factor. Model: docs/model/bin-shape.md.</summary>
public static class SoundingModel
{
    private const double StepMetres = 0.01, StepDegrees = 0.25;

    /// <summary>What a sounding says lies in a bin.</summary>
    /// <remarks>Uncertainty: tape error × area, repose, density and pack factor, each by its effect on the mass, in quadrature; taken as independent [design].</remarks>
    public static SoundingOutcome Of(BinShape shape, Sounding sounding, BulkDensity density, PackFactor pack)
    {
        ArgumentNullException.ThrowIfNull(shape);
        ArgumentNullException.ThrowIfNull(sounding);
        ArgumentNullException.ThrowIfNull(density);
        ArgumentNullException.ThrowIfNull(pack);
        if (Faults(shape, sounding, density, pack) is { Count: > 0 } faults)
        {
            return new NotSounded(faults);
        }

        var level = LevelOf(shape, sounding, sounding.UllageMetres, 0);
        var volume = Volume(shape, sounding, sounding.UllageMetres, 0);
        var byTape = sounding.StandardUncertaintyMetres * Math.Abs(Volume(shape, sounding, sounding.UllageMetres + StepMetres, 0) - Volume(shape, sounding, sounding.UllageMetres - StepMetres, 0)) / (2 * StepMetres);
        var byRepose = shape.ReposeUncertaintyDegrees * Math.Abs(Volume(shape, sounding, sounding.UllageMetres, StepDegrees) - Volume(shape, sounding, sounding.UllageMetres, -StepDegrees)) / (2 * StepDegrees);
        var tonnesPerCubicMetre = density.KilogramsPerCubicMetre / 1000 * pack.Value;
        var tonnes = volume * tonnesPerCubicMetre;
        (string, double Tonnes)[] parts =
        [
            ("tape error × area of the surface", byTape * tonnesPerCubicMetre), ("angle of repose", byRepose * tonnesPerCubicMetre),
            ("test weight", tonnes * density.StandardUncertainty / density.KilogramsPerCubicMetre), ("pack factor", tonnes * pack.StandardUncertainty / pack.Value),
        ];
        var uncertainty = Math.Sqrt(parts.Sum(p => p.Tonnes * p.Tonnes));
        return new Sounded(level, volume, double.Hypot(byTape, byRepose), tonnes, uncertainty, parts, Figure(shape, sounding, density, pack, level, volume, tonnes, uncertainty, parts));
    }

    private static double LevelOf(BinShape shape, Sounding sounding, double ullage, double moreDegrees) => shape.WallMetres - ullage
        - (sounding.From == SoundedFrom.Centre ? shape.Section.InradiusMetres * shape.InwardSlope(sounding.Surface, moreDegrees) : 0);

    private static double Volume(BinShape shape, Sounding sounding, double ullage, double moreDegrees) =>
        BinVolumeModel.VolumeAt(shape, LevelOf(shape, sounding, ullage, moreDegrees), shape.InwardSlope(sounding.Surface, moreDegrees));

    private static List<string> Faults(BinShape shape, Sounding sounding, BulkDensity density, PackFactor pack)
    {
        var faults = shape.Faults().ToList();
        if (faults.Count > 0)
        {
            return faults;
        }

        void Demand(bool holds, string otherwise) => faults.AddRange(holds ? [] : [otherwise]);
        var level = LevelOf(shape, sounding, sounding.UllageMetres, 0);
        var apex = shape.InwardSlope(sounding.Surface) * shape.Section.InradiusMetres;
        Demand(sounding.StandardUncertaintyMetres is >= 0 and <= 5, "The tape's uncertainty lies from 0 to 5 m.");
        Demand(density.KilogramsPerCubicMetre is >= 200 and <= 1000 && density.StandardUncertainty >= 0, "A loose density of wheat lies from 200 to 1000 kg/m³, its uncertainty at 0 or above.");
        Demand(pack.Value is >= 0.8 and <= 1.3 && pack.StandardUncertainty >= 0, "A pack factor lies from 0.8 to 1.3, its uncertainty at 0 or above.");
        Demand(double.IsFinite(sounding.UllageMetres) && (sounding.From == SoundedFrom.Wall ? sounding.UllageMetres >= 0 : level <= shape.WallMetres),
            "The grain would stand above the eave at the wall. Is the ullage measured from the eave down, in metres, and the surface the one that was seen?");
        Demand(!(sounding.From == SoundedFrom.Wall && level < 0), "The tape would end below the floor at the wall: the wall is bare there. Sound in the middle.");
        Demand(!(sounding.From == SoundedFrom.Centre && sounding.UllageMetres > shape.WallMetres + shape.HopperMetres), "The tape would end below the floor in the middle: there the floor is bare. Sound at the wall, or prove the bin empty.");
        Demand(!(sounding.From == SoundedFrom.Centre && sounding.Surface == Surface.DrawnDown && level + apex <= -shape.HopperMetres), "In the middle the tape stands on the bare floor, which says nothing about the grain at the wall. Sound at the wall.");
        return faults;
    }

    private static Figure Figure(
        BinShape shape, Sounding sounding, BulkDensity density, PackFactor pack, double level, double volume, double tonnes, double uncertainty, IReadOnlyList<(string What, double Tonnes)> parts)
    {
        Figure Part(string what, double value, string unit, int decimals, string how, double? u = null) =>
            Quantities.Figure.Reckoned(what, (decimal)value, unit, decimals, new Because(how, [], "docs/model/bin-shape.md")) with { StandardUncertainty = (decimal?)u };
        return Quantities.Figure.Reckoned("Sounded stock", (decimal)tonnes, "t", 1, new Because(
            "Volume × loose density × pack factor. ± is k = 2, of " + string.Join(", ", parts.Select(p => FormattableString.Invariant($"{p.What} {2 * p.Tonnes:0.0} t"))) + ", taken as independent.",
            [
                Quantities.Figure.Seen("Ullage", Math.Round((decimal)sounding.UllageMetres, 3), "m") with { StandardUncertainty = (decimal)sounding.StandardUncertaintyMetres },
                Part("Level at the wall", level, "m", 2, "Height of the wall less the ullage" + (sounding.From == SoundedFrom.Centre ? $", carried from the middle to the wall; {shape.ReposeWords(sounding.Surface)}." : "."), null),
                Part("Volume", volume, "m³", 1, $"Rings at each distance from the wall × height of grain there; surface {sounding.Surface.Words()}, {shape.ReposeWords(sounding.Surface)}; {(shape.IsRound ? "round" : "rectangular")} bin."),
                Part("Loose density", density.KilogramsPerCubicMetre, "kg/m³", 1, density.Words, density.StandardUncertainty),
                Part("Pack factor", pack.Value, "", 3, pack.Words, pack.StandardUncertainty),
            ],
            "geometry; docs/model/bin-shape.md")) with
        {
            StandardUncertainty = (decimal)uncertainty,
        };
    }
}
