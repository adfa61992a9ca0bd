using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tests.Ledger;
using Evengrist.Tracing.Bounds;

namespace Evengrist.Tests.Tracing.Bounds;

/// <summary>A small mill with a random history of two days, posed as a book and as a hidden truth: trucks, bins, a mix, rest, a mill, flour bins, a line, rework and returns.</summary>
internal sealed class RandomPlant
{
    private readonly Random random;
    private readonly Dictionary<string, double> stock = [];
    private readonly List<(string Code, int Trucks)> packages = [];
    private readonly List<(string Bin, double Tonnes, double Hour)> coming = [];
    private int units;

    public RandomPlant(int seed, bool throughToo)
    {
        random = new Random(seed);
        Truth = new Truth(random, throughToo);
        Layout();
        History();
        Start = Choose();
        Truth.IsMarked = (from, to, hour) => Start.Place.Kind.Role() switch
        {
            PlaceRole.Unit => to == Start.Place.Code,
            PlaceRole.Source => from == Start.Place.Code,
            _ => from == Start.Place.Code && PosedMill.Hour(hour) >= Start.From && PosedMill.Hour(hour) < Start.Until,
        };
        Truth.Run(End);
    }

    public const double End = 48;

    public PosedMill Mill { get; } = new();

    public Truth Truth { get; }

    public Suspicion Start { get; }

    public IEnumerable<string> Packages => packages.Select(p => p.Code);

    private void Layout()
    {
        var (stirredTemper, stirredLine) = (random.Next(3) * 2_000_000L, random.Next(2) * 500_000L);
        Mill.Open(PlaceKind.Field, "F1", "F2").Open(PlaceKind.Water, "W").Open(PlaceKind.AdditiveLot, "ADD").Open(PlaceKind.Bin, "B1", "B2", "B3").Open(PlaceKind.MixLine, "MX")
            .Open(new OpenPlace("ta", "TA", PlaceKind.TemperBin) { Stirred = Mass.FromGrams(stirredTemper) }).Open(PlaceKind.MillUnit, "MU").Open(PlaceKind.FlourBin, "FB1", "FB2", "FD")
            .Open(new OpenPlace("pl", "PL", PlaceKind.PackingLine) { Stirred = Mass.FromGrams(stirredLine) }).Open(PlaceKind.Customer, "C").Open(PlaceKind.Loss, "L")
            .Connect("B1", "MX").Connect("B2", "MX").Connect("B3", "MX").Connect("B1", "B3").Connect("MX", "TA").Connect("TA", "MU")
            .Connect("MU", "FB1").Connect("MU", "FB2").Connect("MU", "FD").Connect("FB1", "PL").Connect("FB2", "PL");
        Truth.Places.AddRange([("F1", PlaceKind.Field, 0), ("F2", PlaceKind.Field, 0), ("W", PlaceKind.Water, 0), ("ADD", PlaceKind.AdditiveLot, 0)]);
    }

    private void History()
    {
        var trucks = new List<string>();
        for (var n = 0; n < 8; n++)
        {
            var (code, tonnes, hour) = ($"T{n}", random.Next(4, 15), n < 4 ? 1 : Quarter(2, 30));
            Unit(code, PlaceKind.Truck);
            trucks.Add(code);
            Go(random.Next(2) == 0 ? "F1" : "F2", code, tonnes, hour - 0.5);
            var bin = $"B{random.Next(1, 4)}";
            Go(code, bin, tonnes, hour, random.Next(2) == 0 ? hour + 0.5 : null);
            stock[bin] -= tonnes;
            coming.Add((bin, tonnes, hour + 0.5));
        }

        Truth.Places.AddRange([("B1", PlaceKind.Bin, 0), ("B2", PlaceKind.Bin, 0), ("B3", PlaceKind.Bin, 0), ("MX", PlaceKind.MixLine, 0),
            ("TA", PlaceKind.TemperBin, Mill.Book.Named("TA").Stirred.Grams), ("MU", PlaceKind.MillUnit, 0), ("FB1", PlaceKind.FlourBin, 0), ("FB2", PlaceKind.FlourBin, 0), ("FD", PlaceKind.FlourBin, 0),
            ("PL", PlaceKind.PackingLine, Mill.Book.Named("PL").Stirred.Grams)]);
        for (var hour = 4.0; hour < 40; hour += 4)
        {
            Block(hour);
        }

        Truth.Places.AddRange([("C", PlaceKind.Customer, 0), ("L", PlaceKind.Loss, 0)]);
    }

    private double Quarter(int from, int until) => random.Next(4 * from, 4 * until) / 4.0;

    private double Lies(string code) => stock.GetValueOrDefault(code);

    // Four hours of work, each movement within what is there at its beginning, so that no whim of the truth can run short.
    private void Block(double hour)
    {
        foreach (var (bin, tonnes, _) in coming.Where(c => c.Hour <= hour))
        {
            stock[bin] += tonnes;
        }

        coming.RemoveAll(c => c.Hour <= hour);
        var (a, b) = ($"B{random.Next(1, 4)}", $"B{random.Next(1, 4)}");
        var ready = new Dictionary<string, double>(stock);
        double fromA = Math.Floor(Math.Min(ready.GetValueOrDefault(a), 8) * random.NextDouble()), fromB = a == b ? 0 : Math.Floor(Math.Min(ready.GetValueOrDefault(b), 6) * random.NextDouble());
        var mixed = fromA + fromB;
        if (mixed > 0)
        {
            var water = 0.05 * mixed;
            Go(a, "MX", fromA, hour, hour + 2);
            Go(b, "MX", fromB, hour, hour + 2);
            Go("W", "MX", water, hour, hour + 2);
            Go("MX", "TA", mixed + water, hour, hour + 2);
        }

        var ground = Math.Floor(ready.GetValueOrDefault("TA") * 0.75);
        if (ground > 0)
        {
            var (begin, end) = (hour + 0.5, hour + 2.5);
            Go("TA", "MU", ground, begin, end);
            Go("ADD", "MU", 0.01 * ground, begin, end);
            Go("MU", "FB1", 0.5 * ground, begin, end);
            Go("MU", "FB2", 0.25 * ground, begin, end);
            Go("MU", "FD", 0.21 * ground, begin, end);
            Go("MU", "L", 0.05 * ground, begin, end);
        }

        if (random.Next(3) == 0 && a == "B1" && ready.GetValueOrDefault("B1") - fromA >= 2)
        {
            Go("B1", "B3", 1, hour + 1, hour + 1.5);
        }

        Pack(hour, ready);
    }

    private void Pack(double hour, Dictionary<string, double> ready)
    {
        var flour = Math.Floor(ready.GetValueOrDefault("FB1") * 0.4);
        if (flour > 0)
        {
            Go("FB1", "PL", flour, hour + 0.25, hour + 2.25);
        }

        var boxes = (int)Math.Min(3, Math.Floor(ready.GetValueOrDefault("PL")));
        for (var n = 0; n < boxes; n++)
        {
            var code = Package(PlaceKind.Pallet);
            Go("PL", code, 1, hour + 0.5 * n, random.Next(3) == 0 ? null : hour + 0.5 * (n + 1));
            Onward(code, 1, hour + 2.75);
        }

        var bulk = Math.Floor(ready.GetValueOrDefault("FB2") * 0.4);
        if (bulk > 0)
        {
            var code = Package(PlaceKind.BulkLoad);
            Go("FB2", code, bulk, hour, random.Next(2) == 0 ? null : hour + 1.5);
            Onward(code, bulk, hour + 2);
        }
    }

    private void Onward(string code, double tonnes, double hour)
    {
        switch (random.Next(4))
        {
            case 0:
                Go(code, "C", tonnes, hour);
                if (random.Next(2) == 0)
                {
                    var back = Package(PlaceKind.ReworkTote);
                    Go("C", back, tonnes / 2, hour + 0.25);
                    Go(back, "FB2", tonnes / 2, hour + 0.5, hour + 1);
                }

                break;
            case 1:
                var tote = Package(PlaceKind.ReworkTote);
                Go(code, tote, tonnes, hour);
                Go(tote, random.Next(2) == 0 ? "MU" : "FB1", tonnes, hour + 0.25, hour + 1);
                if (Mill.Book.Movements[^1].To == Mill.Id("MU"))
                {
                    Go("MU", "FB2", tonnes, hour + 0.25, hour + 1);
                }

                break;
        }
    }

    private string Package(PlaceKind kind)
    {
        var code = $"P{++units}";
        Unit(code, kind);
        packages.Add((code, 0));
        return code;
    }

    private void Unit(string code, PlaceKind kind)
    {
        Mill.Open(kind, code);
        Truth.Places.Add((code, kind, 0));
    }

    private void Go(string from, string to, double tonnes, double at, double? until = null)
    {
        var grams = (long)Math.Round(tonnes * 1e6);
        if (grams <= 0)
        {
            return;
        }

        Mill.Record(new Move(Mill.Key(), from, to, Mass.FromGrams(grams), PosedMill.Hour(at), until is { } end ? PosedMill.Hour(end) : null));
        stock[from] = Lies(from) - grams / 1e6;
        stock[to] = Lies(to) + grams / 1e6;
        Truth.Move(from, to, grams, at, until);
    }

    private Suspicion Choose() => random.Next(5) switch
    {
        0 => new Suspicion(Mill.Book.Named("F1")),
        1 => new Suspicion(Mill.Book.Named("ADD")),
        2 => Spanned("B1"),
        3 => Spanned("MU"),
        _ => new Suspicion(Mill.Book.Named($"T{random.Next(8)}")),
    };

    private Suspicion Spanned(string code)
    {
        var begin = Quarter(6, 20);
        return new Suspicion(Mill.Book.Named(code), PosedMill.Hour(begin), PosedMill.Hour(begin + 5));
    }
}
