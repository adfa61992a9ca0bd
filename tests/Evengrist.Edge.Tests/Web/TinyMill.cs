using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using NodaTime;

namespace Evengrist.Edge.Tests.Web;

/// <summary>A mill small enough to reckon by hand, invented for these tests: two bins, three trucks, one day of milling, one hold.</summary>
internal static class TinyMill
{
    public static readonly Instant Morning = Instant.FromUtc(2025, 9, 15, 11, 0);

    /// <summary>Opens it in a new file.</summary>
    public static Mill Open(string path)
    {
        var mill = Mill.Open(MillOptions.InFile(path), SystemClock.Instance);
        mill.Set(new MillSettings { Name = "Little Mill", ZoneId = "America/Chicago" });
        mill.Record([.. Places(), .. Routes(), .. Deliveries(), .. Milling(), .. Happenings()], "Ada Miller", "test");
        return mill;
    }

    private static IEnumerable<Draft> Places()
    {
        OpenPlace Place(string code, PlaceKind kind, string material = "", decimal? tonnes = null, string of = "", string name = "") =>
            new("open-" + code, code, kind, name, material) { Capacity = tonnes is { } t ? Mass.FromTonnes(t) : null, Of = of };
        return
        [
            Place("DS-2", PlaceKind.Field, of: "Drumsallow · Northledge"), Place("WL-1", PlaceKind.Field, of: "Wickenlow · Lowmere"), Place("WATER", PlaceKind.Water),
            Place("25-0709-001", PlaceKind.Truck, "HW"), Place("25-0709-002", PlaceKind.Truck, "HW"), Place("25-0709-003", PlaceKind.Truck, "HW"),
            Place("PIT1", PlaceKind.Pit), Place("LEG1", PlaceKind.Leg),
            Place("B01", PlaceKind.Bin, "HW", 100m, name: "flat bottom"), Place("B02", PlaceKind.Bin, "HW", 40m), Place("B03", PlaceKind.Bin, "SW", 40m),
            Place("MXA", PlaceKind.MixLine), Place("CLA", PlaceKind.Cleaner), Place("TA", PlaceKind.TemperBin, tonnes: 60m), Place("UA", PlaceKind.MillUnit),
            Place("F-WB", PlaceKind.FlourBin, "WB", 30m), Place("Y-BR", PlaceKind.FlourBin, "bran", 20m), Place("L1", PlaceKind.PackingLine),
            Place("P-0001", PlaceKind.Pallet, "WB"), Place("ORLAWICK", PlaceKind.Customer), Place("SHORT", PlaceKind.Shortage),
        ];
    }

    private static IEnumerable<Draft> Routes()
    {
        (string From, string To)[] routes =
        [
            ("PIT1", "LEG1"), ("LEG1", "B01"), ("LEG1", "B02"), ("LEG1", "B03"), ("B01", "MXA"), ("B02", "MXA"),
            ("MXA", "CLA"), ("CLA", "TA"), ("TA", "UA"), ("UA", "F-WB"), ("UA", "Y-BR"), ("F-WB", "L1"),
        ];
        return routes.Select(r => new Connect($"{r.From}>{r.To}", r.From, r.To));
    }

    private static IEnumerable<Draft> Deliveries()
    {
        var day = Morning - Duration.FromDays(60);
        return Deliver("25-0709-001", "DS-2", "B01", 26.34m, 12.4m, day)
            .Concat(Deliver("25-0709-002", "WL-1", "B01", 25.10m, 10.9m, day + Duration.FromHours(2)))
            .Concat(Deliver("25-0709-003", "WL-1", "B02", 24.00m, 11.2m, day + Duration.FromHours(4)));
    }

    private static IEnumerable<Draft> Deliver(string truck, string field, string bin, decimal tonnes, decimal protein, Instant at)
    {
        yield return Move(field, truck, tonnes, at);
        yield return new Measure($"{truck}-protein", truck, at, Property.Protein, protein, "%", Basis.At12, "NIR", "NIR-1", 0.2m);
        yield return new Measure($"{truck}-moisture", truck, at, Property.Moisture, 12.0m, "%", default, "NIR", "NIR-1", 0.1m);
        yield return Move(truck, "PIT1", tonnes, at + Duration.FromMinutes(20), 10);
        yield return Move("PIT1", "LEG1", tonnes, at + Duration.FromMinutes(20), 10);
        yield return Move("LEG1", bin, tonnes, at + Duration.FromMinutes(20), 10);
    }

    private static IEnumerable<Draft> Milling()
    {
        var grind = Morning + Duration.FromHours(10);
        return
        [
            Move("B01", "MXA", 20m, Morning, 240), Move("MXA", "CLA", 20m, Morning, 240), Move("WATER", "CLA", 0.8m, Morning, 240), Move("CLA", "TA", 20.8m, Morning, 240),
            Move("TA", "UA", 15m, grind, 180), Move("UA", "F-WB", 11m, grind, 180), Move("UA", "Y-BR", 4m, grind, 180),
            Move("F-WB", "L1", 1m, grind + Duration.FromHours(4), 20), Move("L1", "P-0001", 1m, grind + Duration.FromHours(4), 20),
            Move("P-0001", "ORLAWICK", 1m, grind + Duration.FromHours(40)),
        ];
    }

    private static IEnumerable<Draft> Happenings() =>
    [
        new Happen("hold-1", "B02", Morning, HappeningKind.Held, "Smell to be looked into."),
        new Happen("note-1", "B01", Morning + Duration.FromHours(1), HappeningKind.Note, "Level indicator reads high."),
    ];

    private static Move Move(string from, string to, decimal tonnes, Instant at, int minutes = 0) =>
        new($"{from}>{to}@{at.ToUnixTimeSeconds()}", from, to, Mass.FromTonnes(tonnes), at, minutes > 0 ? at + Duration.FromMinutes(minutes) : null);
}
