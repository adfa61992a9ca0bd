using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using NodaTime;

namespace Evengrist.Tests.Laboratory.Lots;

/// <summary>A unit that makes white flour and clear, a bin, a line, and pallets packed at 6:30, 13:59, 14:00 and 22:30 of one day; invented. The milling day begins at 06:00 UTC; hours are counted from it.</summary>
internal static class LotMill
{
    public static readonly LocalDate Day = new(2025, 9, 15);

    public static readonly ReleaseRules ThreeShifts = new(3, 120, ["Ada"]);

    // PosedMill counts its hours from noon.
    public static double Hour(double sinceSix) => sinceSix - 6;

    public static Instant At(double sinceSix) => PosedMill.Hour(Hour(sinceSix));

    public static FlourLots Lots(ReleaseRules rules) => new(rules, DateTimeZone.Utc, new LocalTime(6, 0));

    public static PosedMill Open()
    {
        var mill = new PosedMill().Open(PlaceKind.Gain, "GAIN").Open(PlaceKind.TemperBin, "T").Open(PlaceKind.MillUnit, "U").Open(PlaceKind.PackingLine, "L1").Open(PlaceKind.Customer, "BAKERY")
            .Open(new OpenPlace("fw", "FW", PlaceKind.FlourBin, Material: "WB")).Open(new OpenPlace("fc", "FC", PlaceKind.FlourBin, Material: "C1")).Connect("T", "U").Connect("U", "FW").Connect("U", "FC").Connect("FW", "L1").Connect("FC", "L1");
        mill.Move("GAIN", "T", 200, Hour(-8)).Move("T", "U", 100, Hour(-4), Hour(24)).Move("U", "FW", 90, Hour(-4), Hour(24)).Move("U", "FC", 10, Hour(-4), Hour(24));
        mill.Move("FW", "L1", 0.2m, Hour(-0.5), Hour(0)).Move("FC", "L1", 1, Hour(20), Hour(21));
        foreach (var (code, flour, hour) in new[] { ("P1", "WB", 0.5), ("P2", "WB", 7.99), ("P3", "WB", 8.0), ("P4", "WB", 16.5), ("P5", "C1", 21.0) })
        {
            _ = flour == "WB" ? mill.Move("FW", "L1", 1, Hour(hour - 0.5), Hour(hour)) : mill;
            mill.Open(new OpenPlace(code, code, PlaceKind.Pallet, Material: flour)).Move("L1", code, 1, Hour(hour));
        }

        return mill;
    }

    public static PosedMill Read(this PosedMill mill, string on, double hour, decimal value, string method = "NIR", string instrument = "NIR-2", decimal? u = 0.12m, Property what = Property.Protein)
    {
        mill.Record(new Measure(mill.Key(), on, At(hour), what, value, "%", what == Property.Moisture ? default : Basis.At14, method, instrument, u));
        return mill;
    }

    public static IReadOnlyList<Reading> Readings(this PosedMill mill, string lot, ReleaseRules? rules = null) =>
        LotReadings.Of(mill.Book, Lots(rules ?? ThreeShifts).Find(mill.Book, lot)!, rules ?? ThreeShifts, At(100));
}
