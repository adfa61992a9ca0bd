using NodaTime;

namespace Evengrist.Demo;

/// <summary>The harvest: forty-two receiving days from 3 July to 30 August 2025, who comes when, and into which bin each truck is tipped.</summary>
internal sealed class Receiving
{
    // The scale house books its trucks before the mill books the day's draws: so much room a bin must have to spare.
    private const double ADaysDraw = 130;
    private static readonly LocalDate Ninth = new(2025, 7, 9);
    private readonly Dice dice;
    private readonly BinPlan plan;
    private readonly Tickets tickets;
    private readonly Dictionary<string, double> left;
    private readonly Queue<int> forB14 = new();

    public Receiving(ulong seed, BinPlan plan, Tickets tickets, IReadOnlyDictionary<string, double> quotas)
    {
        dice = new Dice(seed, "harvest");
        (this.plan, this.tickets, left) = (plan, tickets, new Dictionary<string, double>(quotas));
        Loads(16, BinPlan.BelowSuspect);
        forB14.Enqueue(BinPlan.Suspect);
        Loads(12, BinPlan.AboveSuspect);
    }

    /// <summary>Days and trucks of each district; those of the last days are fewer where the district has no more.</summary>
    public static IReadOnlyList<Coming> Season { get; } =
    [
        Days(District.Northledge, (7, "3 4 5 7 8 9 10 11 12 14 15 16 17 18 19 20"), 82, 97, 97, 99, 98, 100, 96, 94, 92, 90, 88, 88, 86, 86, 84, 86),
        Days(District.NorthledgeWhite, (7, "3 4 5 7 8 9 10 11 12 14 15 16 17 18 19 20"), [14, 14, 14, .. Enumerable.Repeat(12, 13)]),
        Days(District.ScarrowRim, (7, "12 14 15 16 17 18 19 20 21 22 23 24 25 26"), 4, 4, 5, 6, 6, 7, 8, 6, 66, 66, 66, 50, 50, 50),
        Days(District.TalvinBank, (7, "10 11 12 14 15 16 17 18 19 20 21 22 23 24 25 26 28 30 31 32 33 35 36 37 38 39"), 2, 4, 3, 5, 6, 5, 7, 6, 7, 7, 44, 44, 44, 34, 34, 34, 50, 50, 50, 36, 36, 36, 36, 36, 36, 36),
        Days(District.Lowmere, (7, "24 25 26 28 30 31 32 33 35 36 37 38 39 42 43"), 26, 26, 26, 34, 34, 34, 32, 32, 32, 32, 32, 32, 32, 42, 70),
        Days(District.HighBrack, (8, "18 19 20 22 25 27 28 30"), [.. Enumerable.Repeat(76, 8)]),
    ];

    public static bool IsReceivingDay(LocalDate day) => Season.Any(c => c.Days.Any(d => d.Day == day));

    /// <summary>Tips the trucks of a day. Those that came while the scale house had no network are written on a desk of their own.</summary>
    public IReadOnlyList<Ticket> Day(LocalDate day, Desk desk, Desk offline)
    {
        var line = Season.SelectMany(c => c.Days.Where(d => d.Day == day).SelectMany(d => Enumerable.Repeat(c.District, d.Trucks)))
            .Select(d => (District: d, Place: dice.Even())).OrderBy(t => t.Place).Select(t => t.District).ToList();
        var named = NamedForB14(day);
        var written = new List<Ticket>();
        for (var i = 0; i < line.Count; i++)
        {
            var isNamed = named.Contains(i + 1);
            if (isNamed && line[i] != District.Northledge)
            {
                var other = line.FindIndex(i + 1, d => d == District.Northledge);
                (line[i], line[other]) = (line[other], line[i]);
            }

            var at = MillCalendar.At(day, 6, 15) + Duration.FromSeconds((long)((i + 0.2 + (0.6 * dice.Even())) * 48_600 / line.Count));
            var noNetwork = day == Ninth && at >= MillCalendar.At(day, 14, 5) && at < MillCalendar.At(day, 15, 10);
            if (Truck(line[i], day, at, noNetwork ? offline : desk, isNamed) is { } ticket)
            {
                written.Add(ticket);
            }
        }

        return written;
    }

    private Ticket? Truck(District district, LocalDate day, Instant at, Desk desk, bool isNamed)
    {
        var fields = Grower.FieldsIn(district.Name);
        var (grower, field) = dice.Of(fields);
        var protein = dice.Normal(district.Protein, district.ProteinSd, 8, 17.5);
        var net = 20 * (int)Math.Round(dice.Normal(1300, 38, 1180, 1400));
        string bin;
        if (isNamed)
        {
            (bin, net) = ("B14", forB14.Dequeue());
            if (tickets.Next(day) == BinPlan.SuspectTicket)
            {
                (grower, field) = fields.First(f => f.Field == "DS-2");
            }

            protein = dice.Normal(12.8, 0.4);
        }
        else if (Choose(district, protein, day, net / 1000.0) is { } chosen)
        {
            bin = chosen;
            left[bin] -= net / 1000.0;
        }
        else
        {
            return null;
        }

        var ticket = tickets.Write(desk, field, district.Class, $"{grower.Code} {grower.Farm}", district, net, day, at, bin, protein, full: true);
        plan[bin].Await(ticket.Moves[^1].At, net * 1000L, ticket.Protein, ticket.Moisture);
        return ticket;
    }

    // The better the protein the better the bin, so that all bins of a district fill up together: the truck's rank among its
    // district's trucks is its place in the tonnes still wanted, worst bin first. Which leg is free blurs the rank.
    private string? Choose(District district, double protein, LocalDate day, double tonnes)
    {
        string[] bins = district.Name switch
        {
            "Northledge" when district.Class == "HWW" => ["B13"],
            "Northledge" => day.Day < 12 ? ["B01", "B02", "B04"] : ["B01", "B02", "B03", "B15", "B04"],
            "Scarrow Rim" => ["B06", "B05"],
            "Lowmere" => ["B18", "B07"],
            "Talvin Bank" => ["B08", "B09"],
            _ => ["B10", "B11", "B16", "B12"],
        };
        var open = bins.Where(b => left.GetValueOrDefault(b) > tonnes / 2 && plan[b].FreeTonnes > tonnes + ADaysDraw).ToArray();
        if (open.Length == 0)
        {
            return null;
        }

        var score = (protein - district.Protein) / district.ProteinSd;
        var rank = Rank((0.8 * score) + (0.6 * dice.Normal(0, 1))) * open.Sum(b => left[b]);
        foreach (var bin in open)
        {
            rank -= left[bin];
            if (rank <= 0)
            {
                return bin;
            }
        }

        return open[^1];
    }

    // The normal distribution, by the logistic curve that comes within 0.01 of it.
    private static double Rank(double score) => 1 / (1 + Math.Exp(-1.702 * score));

    private static HashSet<int> NamedForB14(LocalDate day) => (day.Month, day.Day) switch
    {
        (7, 8) => [60, 65, 70, 75, 80, 85, 90, 95, 100, 105],
        (7, 9) => [8, 16, 24, 32, 40, 48, 61, 76, 82, 88, 94, 100, 106],
        (7, 10) => [5, 12, 19, 26, 33, 40],
        _ => [],
    };

    private void Loads(int trucks, int kilograms)
    {
        var before = 0;
        for (var i = 1; i <= trucks; i++)
        {
            var until = i == trucks ? kilograms : 20 * (int)Math.Round(((double)kilograms * i / trucks / 20) + dice.Normal(0, 15));
            forB14.Enqueue(until - before);
            before = until;
        }
    }

    private static Coming Days(District district, (int Month, string Days) when, params int[] trucks) => new(district,
        [.. when.Days.Split(' ').Select((d, i) => (new LocalDate(2025, when.Month, 1).PlusDays(int.Parse(d, System.Globalization.CultureInfo.InvariantCulture) - 1), trucks[i]))]);
}
