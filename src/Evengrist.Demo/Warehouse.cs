using System.Globalization;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The warehouse and its ramp: pallets stand a few days and leave in truckloads; bulk loads leave at once.</summary>
internal sealed class Warehouse(ulong seed)
{
    private const int PalletsPerTruck = 24;
    private static readonly Instant RecalledFrom = MillCalendar.At(new LocalDate(2025, 9, 18), 10), RecalledUntil = MillCalendar.At(new LocalDate(2025, 9, 19), 13);
    private readonly Dice dice = new(seed, "dispatch");
    private readonly Dictionary<Flour, List<StandingPallet>> standing = Enum.GetValues<Flour>().ToDictionary(f => f, _ => new List<StandingPallet>());
    private readonly List<(StandingPallet Pallet, Instant Due)> slow = [];
    private readonly List<(string Code, string To, Instant At)> loads = [];
    private readonly Dictionary<(string, LocalDate), int> loadNumbers = [];

    /// <summary>The next pallet's number.</summary>
    public PalletNumbers Numbers { get; } = new();

    /// <summary>Pallets packed since the ramp last looked.</summary>
    public List<StandingPallet> Pallets { get; } = [];

    /// <summary>Bins loaded in bulk, the word in the load's code, and whether over the flour spout.</summary>
    public static IReadOnlyList<(string Bin, string What, bool Spout)> InBulk { get; } =
    [
        ("F-WB", "WB", true), ("F-HG", "HG", true), ("F-PA", "PA", true), ("F-C2", "C2", true),
        ("Y-BR", "BR", false), ("Y-WF", "WF", false), ("Y-GM", "GM", false), ("Y-SC", "SC", false),
    ];

    /// <summary>Pallets that stand in the warehouse and can still be put on hold.</summary>
    public IEnumerable<StandingPallet> Standing => standing.Values.SelectMany(s => s).Concat(slow.Select(s => s.Pallet));

    /// <summary>Takes pallets out that will not be sold.</summary>
    public void Remove(IReadOnlyCollection<StandingPallet> pallets)
    {
        foreach (var list in standing.Values)
        {
            list.RemoveAll(pallets.Contains);
        }

        slow.RemoveAll(s => pallets.Contains(s.Pallet));
    }

    public string NewLoad(Desk desk, string what, Instant at)
    {
        var day = MillCalendar.Wall(at).Date;
        var number = loadNumbers[(what, day)] = loadNumbers.GetValueOrDefault((what, day)) + 1;
        var code = string.Create(CultureInfo.InvariantCulture, $"L-{what}-{day.Year % 100:00}{day.Month:00}{day.Day:00}-{number}");
        desk.Open(code, PlaceKind.BulkLoad, "bulk", what);
        loads.Add((code, Consignee(what), at + Duration.FromHours(2)));
        return code;
    }

    /// <summary>Takes in the pallets packed since; some lie long, as reserve.</summary>
    public void TakeIn()
    {
        foreach (var pallet in Pallets)
        {
            if (dice.Chance(0.025))
            {
                slow.Add((pallet, pallet.At + Duration.FromDays(dice.Whole(60, 150))));
            }
            else
            {
                standing[pallet.Flour].Add(pallet);
            }
        }

        Pallets.Clear();
    }

    /// <summary>Sends out what a day's trucks take.</summary>
    public void Dispatch(Desk desk, LocalDate day)
    {
        foreach (var (code, to, at) in loads)
        {
            desk.Move(code, to, 25_000_000, at);
        }

        loads.Clear();
        if (day.DayOfWeek is IsoDayOfWeek.Saturday or IsoDayOfWeek.Sunday || day is { Month: 12, Day: 25 })
        {
            return;
        }

        foreach (var (flour, pallets) in standing)
        {
            Send(desk, day, flour, pallets);
        }

        SendReserve(desk, day);
    }

    private void Send(Desk desk, LocalDate day, Flour flour, List<StandingPallet> pallets)
    {
        var at = MillCalendar.At(day, 7 + ((int)flour % 3), 10);
        var leaving = new HashSet<StandingPallet>();
        var keep = 0.45 * pallets.Count;
        while (true)
        {
            var load = pallets.Where(p => !leaving.Contains(p) && p.At < at - Duration.FromHours(24) && (p.NotBefore is not { } free || free < at)).Take(PalletsPerTruck).ToList();
            var isDue = load.Count > 0 && load[0].At < at - Duration.FromDays(7);
            if (load.Count == 0 || (!isDue && (load.Count < PalletsPerTruck || pallets.Count - leaving.Count - load.Count < keep)))
            {
                break;
            }

            var to = Consignee(flour.ToString());
            foreach (var pallet in load)
            {
                desk.Move(pallet.Code, to, PackingLine.PalletGrams, at);
                leaving.Add(pallet);
            }

            at += Duration.FromMinutes(20);
        }

        pallets.RemoveAll(leaving.Contains);
    }

    // What was made on the days of the treated seed and still stands on 14 January stays where it is.
    private void SendReserve(Desk desk, LocalDate day)
    {
        var at = MillCalendar.At(day, 15);
        bool Leaves((StandingPallet Pallet, Instant Due) s) => s.Due <= at && (s.Pallet.NotBefore is not { } free || free < at)
            && !(at > MillCalendar.OpeningMoment && s.Pallet.At >= RecalledFrom && s.Pallet.At < RecalledUntil);
        foreach (var (pallet, _) in slow.Where(Leaves))
        {
            desk.Move(pallet.Code, Consignee(pallet.Flour.ToString()), PackingLine.PalletGrams, at);
        }

        slow.RemoveAll(Leaves);
    }

    private string Consignee(string what) => what switch
    {
        "WB" => dice.Of(["ORLAWICK-1", "ORLAWICK-2", "DUNMARRICK-1", "DUNMARRICK-2"]),
        "AP" => dice.Of(["ORLAWICK-1", "ORLAWICK-2", "BRIGHTCRUST"]),
        "HG" => "C5",
        "PA" => "C6",
        "WW" => dice.Of(["ORLAWICK-1", "ORLAWICK-2"]),
        "SM" => "BRIGHTCRUST",
        "C1" => "C7",
        "C2" => "C8",
        _ => "FENWATHE",
    };
}
