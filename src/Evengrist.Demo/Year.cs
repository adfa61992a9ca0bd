using NodaTime;

namespace Evengrist.Demo;

/// <summary>Plays the crop year day by day and hands over what each station recorded.</summary>
internal sealed class Year
{
    private readonly Desk office = new("office", ["Ines Calloway"]);
    private readonly Desk scale = new("scale house", ["Rafe Tolland", "Maud Ferriby", "Jonas Pell"]);
    private readonly Desk offline = new("scale house, reserved numbers", ["Maud Ferriby"]);
    private readonly Desk mill = new("mill control", ["Osric Venn", "Lidia Marsh", "Tam Underhill"]);
    private readonly Desk hall = new("packing hall", ["Greta Sowden", "Piet Larkin"]);
    private readonly Desk ramp = new("dispatch", ["Bess Arkwell", "Colm Yarrow"]);
    private readonly Desk lab = new("laboratory", ["Dr Anya Holt", "Femi Strand"]);
    private readonly Desk watch = new("bins", ["Rafe Tolland", "Jonas Pell"]);
    private readonly BinPlan plan = new();
    private readonly Tickets tickets;
    private readonly Receiving receiving;
    private readonly Buying buying;
    private readonly Larder larder;
    private readonly (char Code, UnitRun Run)[] units;
    private readonly PackingHall packing;
    private readonly Warehouse warehouse;
    private readonly LabBench bench;
    private readonly FlourStock flours = new();
    private readonly Corrections corrections = new();
    private readonly Holds holds;
    private readonly Rework rework;
    private readonly StoreWatch store;

    public Year(ulong seed)
    {
        var need = new EarlyNeed(plan);
        tickets = new Tickets(new Dice(seed, "tickets"), new GradeBench(seed), Truth, new Dice(seed, "gate"));
        receiving = new Receiving(seed, plan, tickets, need.Quotas());
        buying = new Buying(seed, plan, tickets, need);
        larder = new Larder(plan);
        Sheets = new SheetBook(plan, seed);
        var mixes = new MixDesk(plan, larder, Sheets);
        units = [.. "AB".Select(u => (u, new UnitRun(u, seed, mixes, flours, Truth)))];
        warehouse = new Warehouse(seed);
        rework = new Rework(ramp);
        packing = new PackingHall(mill, hall, flours, new Additives(), warehouse, rework);
        bench = new LabBench(seed);
        store = new StoreWatch(seed, plan);
        holds = new Holds(seed, rework);
    }

    public Truth Truth { get; } = new();

    public BinPlan Plan => plan;

    /// <summary>Mix sheets written, complete once the batches have been gone through.</summary>
    public SheetBook Sheets { get; }

    /// <summary>Slots booked, complete once the batches have been gone through.</summary>
    public IReadOnlyList<Records.Intake.Booking> Bookings => tickets.Bookings;

    public IEnumerable<DemoBatch> Batches()
    {
        Plant.Open(office, plan);
        foreach (var (bin, wheat, tonnes, protein) in BinPlan.Opening.Where(o => o.Tonnes > 0))
        {
            office.Move($"OPEN-{wheat}", bin, tonnes * 1_000_000L, MillCalendar.Begin);
            plan[bin].Fill(tonnes * 1_000_000L, protein, 12);
        }

        foreach (var (_, run) in units)
        {
            run.Begin(office);
        }

        yield return corrections.Number(office.Close(MillCalendar.Begin));
        var slots = UnitRun.Slots().ToLookup(s => MillCalendar.MillingDay(s.From));
        var days = 0;
        for (var day = MillCalendar.FirstDay; day <= MillCalendar.LastDay; day = day.PlusDays(1))
        {
            Day(day, slots[day]);
            days++;
            if (day < MillCalendar.PlanDay || days % 4 == 0 || day == MillCalendar.LastDay)
            {
                foreach (var batch in Close(MillCalendar.At(day.PlusDays(1), 6, 10)))
                {
                    yield return batch;
                }
            }
        }
    }

    private void Day(LocalDate day, IEnumerable<(Instant From, Instant Until)> slots)
    {
        if (day.Day == 1)
        {
            bench.Sound(lab, plan, day);
        }

        var tipped = receiving.Day(day, scale, offline);
        corrections.Consider(day, tipped, scale);
        buying.Day(day, scale, larder);
        warehouse.TakeIn();
        holds.Day(lab, warehouse, day);
        rework.Day(day);
        warehouse.Dispatch(ramp, day);
        store.Day(watch, day);
        foreach (var (from, until) in slots)
        {
            foreach (var bin in plan.Bins)
            {
                bin.Settle(from);
            }

            packing.LoadOut(from);
            foreach (var (unit, run) in units)
            {
                var (flour, grams) = run.Run(mill, from, until);
                packing.Pack(unit, flour, grams, from, until, IsLast(unit, flour, until));
                bench.Read(lab, Truth.Flours[^1], until);
                if (MillCalendar.Wall(from).Hour == 10)
                {
                    bench.Check(lab, Truth.Flours[^1]);
                }
            }
        }

        Incidents.InTheLaboratory(lab, day);
        BinEpisodes.Day(scale, day);
    }

    private static bool IsLast(char unit, Flour flour, Instant until)
    {
        var next = MillCalendar.RunningAfter(until - Duration.FromHours(1), 1);
        return next != until || MillCalendar.Campaign(unit, MillCalendar.MillingDay(next)) != flour;
    }

    private IEnumerable<DemoBatch> Close(Instant recorded)
    {
        corrections.Write(scale);
        foreach (var desk in new[] { scale, offline, mill, hall, lab, ramp, watch })
        {
            if (desk.HasDrafts)
            {
                yield return corrections.Number(desk.Close(recorded));
            }
        }
    }
}
