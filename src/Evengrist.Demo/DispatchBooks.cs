using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Packing.Dispatch;
using Evengrist.Records;
using Evengrist.Records.Packing.Dispatch;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The papers of the ramp: cards of consignees, and the loads of the days before the opening moment with their trailer checks and seals, laid over the movements that are there; one load is being loaded. All invented.</summary>
public static class DispatchBooks
{
    private const string Ramp = "Oskar Penhale", Second = "Lida Marsh", Office = "Ines Calloway";
    private static readonly LocalDate First = new(2026, 1, 12), Today = new(2026, 1, 14);
    private static readonly string[] Carriers = ["H1", "H2", "H3"];

    /// <summary>The cards. One consignee was never rung, one changed its number and was not asked again, one has no number for the night.</summary>
    public static IReadOnlyList<ConsigneeCard> Cards { get; } =
    [
        Card("ORLAWICK-1", "Orlawick, north depot", "14 Granary Street, Orlawick", "Hanne Boyle", 1, ConsigneeUse.Retailer, 120, new(2025, 11, 4)), Card("ORLAWICK-2", "Orlawick, south depot", "3 Canal Side, Orlawick", "Peter Ahlund", 3, ConsigneeUse.Retailer, 120, new(2025, 11, 4)),
        Card("DUNMARRICK-1", "Dunmarrick Bakeries, plant bakery", "1 Oven Road, Dunmarrick", "Sunniva Clarke", 5, ConsigneeUse.Bakery, 60, new(2025, 9, 22)), Card("DUNMARRICK-2", "Dunmarrick Bakeries, rolls bakery", "27 Mill Race, Dunmarrick", "Rory Pell", 7, ConsigneeUse.Bakery, 60, new(2024, 10, 2)),
        Card("BRIGHTCRUST", "Brightcrust Larder", "Unit 9, Larder Park", "Mina Sol", 9, ConsigneeUse.Mixer, 90, new(2025, 12, 1)), Card("C5", "pizza kitchens", "40 Ring Road, Ulverhan Plain", "Ed Varga", 11, ConsigneeUse.Bakery, 0, new(2025, 7, 15)),
        Card("C6", "biscuit works", "Biscuit Lane, Ulverhan Plain", "Jo Lindqvist", 13, ConsigneeUse.Mixer, 30, new(2025, 8, 28)) with { RecallPhone = "" }, Card("C7", "rye-bread bakers", "2 Buying Hall, Ulverhan Plain", "", 15, ConsigneeUse.Merchant, 0, null),
        Card("C8", "starch and gluten works", "Works Road, Ulverhan Plain", "Ulla Frome", 17, ConsigneeUse.Other, 0, new(2025, 10, 10)), Card("FENWATHE", "Fenwathe Feeds", "The Feed Mill, Fenwathe", "Tam Birch", 19, ConsigneeUse.Feed, 0, new(2025, 10, 10)),
    ];

    /// <summary>Keeps them once the year's facts stand; kept already, nothing is changed.</summary>
    public static void Keep(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (DispatchShelf.All(mill).Count > 0)
        {
            return;
        }

        foreach (var card in Cards)
        {
            if (Consignees.Keep(mill, card, Office).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }

        var shelf = mill.Papers(DispatchLoad.Kind);
        var rules = KeepDispatchRules.Newest(mill).Rules;
        foreach (var load in Gone(mill, rules))
        {
            shelf.Keep(load.Number, 1, load.ToJson(), load.Departed?.By ?? Ramp);
        }

        foreach (var load in new[] { Loading(rules), TurnedAway(rules), Next() })
        {
            shelf.Keep(load.Number, 1, load.ToJson(), Ramp);
        }
    }

    // What left together for one consignee was one load; the slow reserve of the afternoon went by parcel carriers and has no paper.
    private static IEnumerable<DispatchLoad> Gone(Mill mill, DispatchRules rules)
    {
        var (from, until) = (MillCalendar.At(First, 0), MillCalendar.OpeningMoment);
        var left = mill.Ask(view => view.Book.Movements.Where((m, i) => m.At >= from && m.At <= until && view.Book.Counts(i) && view.Book[m.To].Kind == PlaceKind.Customer && view.Book[m.From].Kind is PlaceKind.Pallet or PlaceKind.BulkLoad)
            .GroupBy(m => (m.At, m.To)).Select(g => (g.Key.At, To: view.Book[g.Key.To].Code, Packages: g.Select(m => view.Book[m.From]).ToArray())).OrderBy(g => g.At).ToArray());
        var numbers = new Dictionary<LocalDate, int>();
        foreach (var (at, to, packages) in left.SelectMany(l => l.Packages.GroupBy(p => (p.Material, p.Kind)).Select(g => (l.At, l.To, Packages: g.ToArray()))))
        {
            var tanker = packages[0].Kind == PlaceKind.BulkLoad;
            if (!tanker && packages.Length < 10)
            {
                continue;
            }

            var day = MillCalendar.Wall(at).Date;
            var n = numbers[day] = numbers.GetValueOrDefault(day) + 1;
            var (by, begun) = (n % 3 == 0 ? Second : Ramp, at - Duration.FromMinutes(tanker ? 55 : 35));
            var trailer = tanker ? string.Create(CultureInfo.InvariantCulture, $"tanker {n % 7 + 1}") : string.Create(CultureInfo.InvariantCulture, $"trailer {60 + ((n * 7) % 31)}");
            var seal = string.Create(CultureInfo.InvariantCulture, $"{40_000 + (day.DayOfYear * 100) + n}");
            var load = new DispatchLoad(string.Create(CultureInfo.InvariantCulture, $"D-{day:yyMMdd}-{n}"), day, to)
            {
                Carrier = n == 4 ? "" : Carriers[n % 3], Trailer = trailer, IsTanker = tanker, Planned = [new(packages[0].Material, packages.Length)],
                Packages = [.. packages.Select((p, i) => new LoadedPackage(p.Code, begun + Duration.FromSeconds(600 + (45 * i)), by))],
            };
            yield return Checked(load, rules, begun, by, "flour") with { Sealed = new([seal], at - Duration.FromMinutes(4), by), Departed = new(at, by) { Seals = [seal] } };
        }
    }

    // White bread of the reserve of September; the last scanned is one of those the laboratory holds, and stays on the ramp.
    private static DispatchLoad Loading(DispatchRules rules)
    {
        var begun = MillCalendar.At(Today, 10, 18);
        string[] reserve = ["P-WB-250918-0146", "P-WB-250918-0184", "P-WB-250918-0202", "P-WB-250918-0229"];
        var load = new DispatchLoad("D-260114-90", Today, "DUNMARRICK-1")
        {
            Carrier = "H2", Trailer = "trailer 77", Driver = "Wim Caddow", Orders = ["SO-5102"], Planned = [new("WB", 6)],
            Packages = [.. reserve.Select((p, i) => new LoadedPackage(p, begun + Duration.FromSeconds(420 + (50 * i)), Ramp) { Reason = i < 4 ? "released in September" : "" }), new("P-WB-260113-0003", begun + Duration.FromSeconds(700), Second) { Reason = "stood beside them" }],
        };
        return Checked(load, rules, begun, Ramp, "bagged flour");
    }

    private static DispatchLoad TurnedAway(DispatchRules rules)
    {
        var begun = MillCalendar.At(Today, 9, 25);
        var load = Checked(new DispatchLoad("D-260114-91", Today, "C6") { Carrier = "H3", Trailer = "trailer 64", Planned = [new("PA", 24)] }, rules, begun, Second, "fertiliser");
        return load with
        {
            Answers = [.. load.Answers.Select(a => a.Point == "odour" ? a with { IsGood = false, Note = "sharp smell at the front wall, white dust in the corners" } : a)],
            Away = new(begun + Duration.FromMinutes(12), Second, "carried fertiliser before, and smells of it; the carrier sends another"),
        };
    }

    private static DispatchLoad Next() => new("D-260114-92", Today, "C6") { Carrier = "H3", Planned = [new("PA", 24)], Orders = ["SO-5119"] };

    private static DispatchLoad Checked(DispatchLoad load, DispatchRules rules, Instant at, string by, string previous) => load with
    {
        Answers = [.. rules.PointsOf(load).Select((p, i) => new TrailerAnswer(p.Code, true, at + Duration.FromSeconds(30 * i), by))],
        History = new(previous, at + Duration.FromMinutes(4), by),
    };

    private static ConsigneeCard Card(string code, string name, string address, string contact, int phone, ConsigneeUse use, int days, LocalDate? confirmed) => new(code, name)
    {
        Address = address, Contact = contact, Phone = string.Create(CultureInfo.InvariantCulture, $"555-02{phone:00}"), RecallPhone = string.Create(CultureInfo.InvariantCulture, $"555-02{phone + 1:00}"), Use = use, LeastDaysLeft = days, Confirmed = confirmed, ConfirmedBy = confirmed is null ? "" : Office,
    };
}
