using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Bench.Records;

/// <summary>Invented facts in the proportions of a year: trucks in by pit and leg to bins, pallets out by mill unit and packing line.</summary>
internal static class Year
{
    private static readonly Instant Start = Instant.FromUtc(2025, 7, 1, 6, 0);
    private const int Bins = 24;

    public static IReadOnlyList<Draft> Plant { get; } =
    [
        new OpenPlace("f", "FIELD", PlaceKind.Field), new OpenPlace("pit", "PIT", PlaceKind.Pit), new OpenPlace("leg", "LEG", PlaceKind.Leg),
        new OpenPlace("unit", "UNIT", PlaceKind.MillUnit), new OpenPlace("fb", "FLOUR", PlaceKind.FlourBin), new OpenPlace("line", "LINE", PlaceKind.PackingLine),
        new OpenPlace("cust", "CUSTOMER", PlaceKind.Customer), new OpenPlace("loss", "LOSS", PlaceKind.Loss),
        .. Enumerable.Range(1, Bins).Select(b => new OpenPlace($"b{b}", $"B{b}", PlaceKind.Bin)),
        new Connect("c1", "PIT", "LEG"), new Connect("c2", "UNIT", "FLOUR"), new Connect("c3", "FLOUR", "LINE"),
        .. Enumerable.Range(1, Bins).SelectMany(b => new Draft[] { new Connect($"i{b}", "LEG", $"B{b}"), new Connect($"o{b}", $"B{b}", "UNIT") }),
    ];

    /// <summary>Group after group without end: a truck's 12 facts, or a pallet's 4, as 1 truck to 30 pallets.</summary>
    public static IEnumerable<Draft[]> Groups()
    {
        for (var n = 0; ; n++)
        {
            var at = Start + Duration.FromSeconds(n * 200L);
            yield return n % 31 == 0 ? Truck(n, at) : Pallet(n, at);
        }
    }

    /// <summary>Batches of about the size, whole groups each.</summary>
    public static IEnumerable<IReadOnlyList<Draft>> Batches(int size)
    {
        var batch = new List<Draft>(size + 12);
        foreach (var group in Groups())
        {
            batch.AddRange(group);
            if (batch.Count >= size)
            {
                yield return batch;
                batch = new List<Draft>(size + 12);
            }
        }
    }

    private static Draft[] Truck(int n, Instant at)
    {
        var (ticket, bin, mass) = ($"T{n}", $"B{1 + (n / 31 % Bins)}", Mass.FromTonnes(38m));
        return
        [
            new OpenPlace(ticket, ticket, PlaceKind.Truck, "KS 123"), new Move(ticket + "/net", "FIELD", ticket, mass, at),
            .. new[] { Property.Protein, Property.Ash }.Select(p => new Measure($"{ticket}/{p}", ticket, at, p, 12.10m, "%", Basis.At12, "NIR", "N1", 0.15m)),
            .. new[] { Property.Moisture, Property.Dockage }.Select(p => new Measure($"{ticket}/{p}", ticket, at, p, 11.4m, "%", default, "NIR", "N1")),
            new Measure(ticket + "/tw", ticket, at, Property.TestWeight, 79.2m, "kg/hL", default, "scale"),
            new Move(ticket + "/pit", ticket, "PIT", mass, at), new Move(ticket + "/leg", "PIT", "LEG", mass, at), new Move(ticket + "/bin", "LEG", bin, mass, at),
            new Move(ticket + "/draw", bin, "UNIT", mass, at), new Move(ticket + "/flour", "UNIT", "FLOUR", mass, at),
        ];
    }

    private static Draft[] Pallet(int n, Instant at)
    {
        var (pallet, mass) = ($"P{n}", Mass.FromKilograms(1000m));
        return
        [
            new OpenPlace(pallet, pallet, PlaceKind.Pallet, Material: "Bread flour"), new Move(pallet + "/line", "FLOUR", "LINE", mass, at),
            new Move(pallet + "/pack", "LINE", pallet, mass, at), new Move(pallet + "/ship", pallet, "CUSTOMER", mass, at),
        ];
    }
}
