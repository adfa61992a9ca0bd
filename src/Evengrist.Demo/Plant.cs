using Evengrist.Ledger;

namespace Evengrist.Demo;

/// <summary>The fixed places of the demonstration mill, where grain comes from and where it goes, and the routes between them.</summary>
internal static class Plant
{
    public static readonly string[] Pits = ["PIT1", "PIT2"];

    /// <summary>Code, name and flours taken, each customer depot by itself, with its share of its flour.</summary>
    public static readonly (string Code, string Name, string Town)[] Customers =
    [
        ("ORLAWICK-1", "Orlawick", "north depot"), ("ORLAWICK-2", "Orlawick", "south depot"), ("DUNMARRICK-1", "Dunmarrick Bakeries", "plant bakery"),
        ("DUNMARRICK-2", "Dunmarrick Bakeries", "rolls bakery"), ("BRIGHTCRUST", "Brightcrust Larder", "warehouse"), ("C5", "pizza kitchens", "central kitchen"),
        ("C6", "biscuit works", "works"), ("C7", "rye-bread bakers", "buying group"), ("C8", "starch and gluten works", "works"), ("FENWATHE", "Fenwathe Feeds", "feed mill"),
    ];

    public static void Open(Desk office, BinPlan plan)
    {
        Sources(office);
        foreach (var (code, name, town) in Customers)
        {
            office.Open(code, PlaceKind.Customer, name, of: town);
        }

        office.Open("WASTE", PlaceKind.Waste, "waste and sweepings");
        office.Open("LOSS", PlaceKind.Loss, "evaporation and unweighed");
        office.Open("GAIN", PlaceKind.Gain, "found more than booked");
        office.Open("SHORT", PlaceKind.Shortage, "found less than booked");
        Wheat(office, plan);
        Mill(office);
        Packing(office);
    }

    private static void Sources(Desk office)
    {
        foreach (var grower in Grower.All)
        {
            foreach (var field in grower.Fields)
            {
                office.Open(field, PlaceKind.Field, $"{grower.Code} {field}", of: $"{grower.Farm} · {grower.District}");
            }
        }

        office.Open("E1", PlaceKind.Elevator, "country elevator E1, rail");
        office.Open("E2", PlaceKind.Elevator, "country elevator E2, road");
        office.Open("WATER", PlaceKind.Water, "mains water");
        foreach (var wheat in new[] { "HW", "HS", "SW", "HWW" })
        {
            office.Open($"OPEN-{wheat}", PlaceKind.Opening, "stock of 1 July 2025", wheat);
        }
    }

    private static void Wheat(Desk office, BinPlan plan)
    {
        foreach (var (pit, leg) in Pits.Select((pit, i) => (pit, $"LEG{i + 1}")))
        {
            office.Open(pit, PlaceKind.Pit);
            office.Open(leg, PlaceKind.Leg);
            office.Connect(pit, leg);
        }

        foreach (var unit in "AB")
        {
            office.Open($"MX{unit}", PlaceKind.MixLine, $"mix line {unit}");
            office.Open($"CL{unit}", PlaceKind.Cleaner, $"screenroom and dampener {unit}");
            office.Open($"T{unit}", PlaceKind.TemperBin, $"temper bins of unit {unit}", capacityTonnes: unit == 'A' ? 420 : 180, stirredTonnes: UnitRun.StirredTonnes(unit));
            office.Open($"U{unit}", PlaceKind.MillUnit, $"Unit {unit}");
            office.Connect($"MX{unit}", $"CL{unit}");
            office.Connect($"CL{unit}", $"T{unit}");
            office.Connect($"T{unit}", $"U{unit}");
        }

        foreach (var bin in plan.Bins)
        {
            var name = bin.CapacityTonnes switch { 10_000 => "flat bottom", 5_000 => "hopper", _ => "steep hopper" };
            office.Open(bin.Code, PlaceKind.Bin, name, bin.Material, capacityTonnes: bin.CapacityTonnes, core: bin.CoreShare);
            foreach (var (from, to) in new[] { ("LEG1", bin.Code), ("LEG2", bin.Code), (bin.Code, "MXA"), (bin.Code, "MXB") })
            {
                office.Connect(from, to);
            }
        }
    }

    private static void Mill(Desk office)
    {
        foreach (var flour in new[] { Flour.WB, Flour.AP, Flour.HG, Flour.PA, Flour.WW, Flour.C1, Flour.C2 })
        {
            office.Open($"F-{flour}", PlaceKind.FlourBin, $"flour bin {flour}", flour.ToString(), capacityTonnes: 150);
        }

        foreach (var (code, name) in new[] { ("Y-BR", "bran"), ("Y-WF", "wheatfeed"), ("Y-GM", "germ"), ("Y-SC", "screenings") })
        {
            office.Open(code, PlaceKind.FlourBin, name + " bin", name, capacityTonnes: 150);
            office.Connect(code == "Y-SC" ? "CLA" : "UA", code);
            office.Connect(code == "Y-SC" ? "CLB" : "UB", code);
        }

        foreach (var (unit, flours) in new[] { ('A', "WB AP"), ('B', "HG PA WW") })
        {
            // A blending place behind the rolls; of the kinds of place a mill unit is the one that lies there and blends at once.
            office.Open($"FM{unit}", PlaceKind.MillUnit, $"flour mixer of unit {unit}, with feeders");
            office.Connect($"U{unit}", $"FM{unit}");
            office.Connect($"U{unit}", "F-C1");
            office.Connect($"U{unit}", "F-C2");
            foreach (var flour in flours.Split(' '))
            {
                office.Connect($"FM{unit}", $"F-{flour}");
            }
        }
    }

    private static void Packing(Desk office)
    {
        foreach (var (line, flours) in new[] { ("L1", "WB AP"), ("L2", "WB AP C1"), ("L3", "HG PA WW"), ("SPOUT", "WB HG PA C2") })
        {
            office.Open(line, PlaceKind.PackingLine, line == "SPOUT" ? "bulk spout" : $"packing line {line[1]}");
            foreach (var flour in flours.Split(' '))
            {
                office.Connect($"F-{flour}", line);
            }
        }
    }
}
