using Evengrist.Bins.Shape;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records.Bins;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The laboratory: the flour NIR of each running unit every hour, a reference check a day, soundings of the bins once a month.</summary>
internal sealed class LabBench(ulong seed)
{
    private readonly Dice dice = new(seed, "laboratory"), tape = new(seed, "tape");

    /// <summary>Readings of a stretch's flour. Instrument errors: protein 0.12, ash 0.02, moisture 0.12 (inside the quoted ranges).</summary>
    public void Read(Desk desk, FlourTruth flour, Instant until)
    {
        var (on, nir) = ($"U{flour.Unit}", flour.Unit == 'A' ? "NIR-2" : "NIR-3");
        for (var at = flour.At + Duration.FromMinutes(30); at < until; at += Duration.FromHours(1))
        {
            var shift = flour.Unit == 'A' ? Incidents.NirShift(at) : 0;
            desk.Read(on, at, Property.Protein, Round(flour.Protein + shift + dice.Normal(0, 0.12), 2), "%", Basis.At14, "NIR", nir, 0.12m);
            desk.Read(on, at, Property.Ash, Round(flour.Ash + dice.Normal(0, 0.02), 3), "%", Basis.At14, "NIR", nir, 0.02m);
            desk.Read(on, at, Property.Moisture, Round(flour.Moisture + dice.Normal(0, 0.12), 1), "%", default, "NIR", nir, 0.12m);
        }
    }

    /// <summary>A sample read by combustion and oven beside the NIR. Repeatability: protein 0.05, moisture 0.05 as standard deviations.</summary>
    public void Check(Desk desk, FlourTruth flour)
    {
        var (on, at) = ($"U{flour.Unit}", flour.At + Duration.FromMinutes(75));
        desk.Read(on, at, Property.Protein, Round(flour.Protein + dice.Normal(0, 0.05), 2), "%", Basis.At14, "combustion", "N-1", 0.05m);
        desk.Read(on, at, Property.Moisture, Round(flour.Moisture + dice.Normal(0, 0.05), 2), "%", default, "oven 130 °C", "oven 2", 0.05m);
        desk.Read(on, at, Property.Ash, Round(flour.Ash + dice.Normal(0, 0.005), 3), "%", Basis.At14, "furnace", "furnace 1", 0.005m);
    }

    /// <summary>Sounds every bin with a tape from the hatch: 0.1 m off at one standard deviation, turned into tonnes by the bin's shape. Hidden: the wheat packs by 1.05 and weighs a little less than booked.</summary>
    public void Sound(Desk desk, BinPlan plan, LocalDate day)
    {
        var at = MillCalendar.At(day, 6);
        foreach (var bin in plan.Bins.Where(b => b.Grams > 0))
        {
            var off = tape.Normal(0, 1);
            var shape = HouseBins.ShapeOf(bin.Code);
            var density = BulkDensity.Of(TestWeight.Read(TestWeightOf(bin), TestWeightConvention.KilogramsPerHectolitre));
            var volume = 0.998 * 1000 * bin.Tonnes / (density.KilogramsPerCubicMetre * 1.05);
            var surface = volume > BinVolumeModel.MostOf(shape, Surface.DrawnDown) ? Surface.Heaped : Surface.DrawnDown;
            var level = BinVolumeModel.LevelOf(shape, Math.Min(volume, BinVolumeModel.MostOf(shape, surface)), surface);
            var sounding = new Sounding(Math.Round(Math.Max(0, shape.WallMetres - level + (0.1 * off)), 2), surface);
            var pack = HouseBins.PackOf(bin.Code);

            // Where the wall is bare the tape at the wall says nothing, and nothing is written.
            if (SoundingModel.Of(shape, sounding, density, pack) is Sounded sounded)
            {
                foreach (var draft in new RecordSounding(desk.Key(), bin.Code, at, sounding, sounded, $"{density.Words}; pack factor {(pack.IsCalibrated ? "calibrated" : "not calibrated")}").Drafts())
                {
                    desk.Add(draft);
                }
            }
        }
    }

    // What the mill's people know of a bin's wheat; kg/hL.
    private static decimal TestWeightOf(WheatBin bin) => bin.Code switch { "B05" => 75.9m, "B06" => 77.0m, "B07" => 77.1m, _ => bin.Material switch { "SW" => 77.5m, "HS" => 80.1m, "HWW" => 79.6m, _ => 79.0m } };

    internal static decimal Round(double value, int digits) => Math.Round((decimal)value, digits, MidpointRounding.AwayFromZero);
}
