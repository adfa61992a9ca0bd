using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Tests;

/// <summary>A small mill for tests: invented, and no larger than a test needs.</summary>
internal static class SmallMill
{
    public static readonly Instant Morning = Instant.FromUtc(2026, 7, 1, 6, 0);

    public static IReadOnlyList<Draft> Places { get; } =
    [
        new OpenPlace("p1", "F1", PlaceKind.Field, "North forty") { Of = "Grower One" },
        new OpenPlace("p2", "PIT", PlaceKind.Pit),
        new OpenPlace("p3", "LEG", PlaceKind.Leg),
        new OpenPlace("p4", "B1", PlaceKind.Bin, Material: "HRW") { Capacity = Mass.FromTonnes(500m), CoreShare = 0.15 },
        new OpenPlace("p5", "B2", PlaceKind.Bin, Material: "HRW") { Capacity = Mass.FromTonnes(500m) },
        new OpenPlace("p6", "GAIN", PlaceKind.Gain),
        new OpenPlace("p7", "SHORT", PlaceKind.Shortage),
        new Connect("c1", "PIT", "LEG"),
        new Connect("c2", "LEG", "B1"),
        new Connect("c3", "LEG", "B2"),
    ];

    /// <summary>A truck from field F1 by pit and leg into a bin.</summary>
    public static IReadOnlyList<Draft> Truck(string ticket, decimal tonnes, Instant at, string bin = "B1")
    {
        var mass = Mass.FromTonnes(tonnes);
        return
        [
            new OpenPlace(ticket, ticket, PlaceKind.Truck, "KS 123"),
            new Move(ticket + "/net", "F1", ticket, mass, at),
            new Measure(ticket + "/protein", ticket, at, Property.Protein, 12.10m, "%", Basis.At12, "NIR", "N1", 0.15m),
            new Happen(ticket + "/contract", ticket, at, HappeningKind.Contract, "SPOT 1"),
            new Move(ticket + "/pit", ticket, "PIT", mass, at),
            new Move(ticket + "/leg", "PIT", "LEG", mass, at),
            new Move(ticket + "/bin", "LEG", bin, mass, at),
        ];
    }

    public static Mass Stock(this Mill mill, string code) => mill.Ask(v => v.Book.StockOf(v.Book.Named(code).Id));

    public static Mass SumOfStocks(this Mill mill) => mill.Ask(v => v.Book.Places.Aggregate(Mass.Zero, (sum, p) => sum + v.Book.StockOf(p.Id)));
}
