using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The laboratory: the flour NIR every hour on each running unit, a reference check a day, soundings of the bins once a month.</summary>
internal sealed class LabBench(ulong seed)
{
    private readonly Dice dice = new(seed, "laboratory");

    /// <summary>Readings of a stretch's flour. Instrument errors: protein 0.12, ash 0.02, moisture 0.12 (inside the quoted ranges).</summary>
    public void Read(Desk desk, FlourTruth flour, Instant until)
    {
        var on = $"U{flour.Unit}";
        for (var at = flour.At + Duration.FromMinutes(30); at < until; at += Duration.FromHours(1))
        {
            var shift = Incidents.NirShift(at);
            desk.Read(on, at, Property.Protein, Round(flour.Protein + shift + dice.Normal(0, 0.12), 2), "%", Basis.At14, "NIR", "NIR-2", 0.12m);
            desk.Read(on, at, Property.Ash, Round(flour.Ash + dice.Normal(0, 0.02), 3), "%", Basis.At14, "NIR", "NIR-2", 0.02m);
            desk.Read(on, at, Property.Moisture, Round(flour.Moisture + dice.Normal(0, 0.12), 1), "%", default, "NIR", "NIR-2", 0.12m);
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

    /// <summary>Sounds every bin with a tape from the hatch: a level good to about one and a half per cent.</summary>
    public void Sound(Desk desk, BinPlan plan, LocalDate day)
    {
        var at = MillCalendar.At(day, 7);
        foreach (var bin in plan.Bins.Where(b => b.Grams > 0))
        {
            var sd = Math.Max(2, 0.015 * bin.Tonnes);
            desk.Read(bin.Code, at, Property.SoundedStock, Round(Math.Max(0, (0.998 * bin.Tonnes) + dice.Normal(0, sd)), 0), "t", default, "tape from the hatch", "", Round(sd, 0));
        }
    }

    internal static decimal Round(double value, int digits) => Math.Round((decimal)value, digits, MidpointRounding.AwayFromZero);
}
