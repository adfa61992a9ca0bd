using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>The packing hall: flour comes from the units with its additives into the flour bins, and leaves them over three lines and the bulk spout.</summary>
internal sealed class PackingHall(Desk mill, Desk hall, FlourStock stock, Additives additives, Warehouse warehouse, Rework rework)
{
    private static readonly Duration EachByItself = Duration.Zero, Counted = Duration.FromMinutes(20), Spout = Duration.FromMinutes(20);
    private static readonly Instant SuspectFrom = MillCalendar.At(new LocalDate(2025, 9, 18), 10), SuspectUntil = MillCalendar.At(new LocalDate(2025, 9, 21), 6);
    private static readonly Instant NoMaltFrom = MillCalendar.At(new LocalDate(2025, 12, 2), 14, 10), NoMaltUntil = MillCalendar.At(new LocalDate(2025, 12, 2), 14, 35);
    private readonly PackingLine line1 = new("L1", "40 × 25 kg", warehouse.Numbers), retail = new("L2", "2 kg, 8 to a bale", warehouse.Numbers),
        line3 = new("L3", "40 × 25 kg", warehouse.Numbers), clears = new("L2", "40 × 25 kg", warehouse.Numbers), soyMix = new("L2", "12 × 1 kg, contains soy", warehouse.Numbers);

    /// <summary>Packs what a unit made in a stretch.</summary>
    /// <param name="last">Whether another flour follows, or a shut day.</param>
    public void Pack(char unit, Flour flour, long made, Instant from, Instant until, bool last)
    {
        var bin = $"F-{flour}";
        made += Add($"FM{unit}", flour, bin, made, from, until);
        stock.Add(bin, made);
        stock.Add(bin, MillCalendar.SurveyWeek(MillCalendar.MillingDay(from)) ? 0 : rework.Feed(mill, flour, bin, from));
        var survey = unit == 'A' && MillCalendar.SurveyWeek(MillCalendar.MillingDay(from));
        var hour = MillCalendar.Wall(from).Hour;
        var share = survey ? 1 : flour switch { Flour.WB => 0.64, Flour.HG => 0.62, Flour.PA => 0.50, _ => 1 };
        var toLines = (long)(made * share);
        var scan = from >= SuspectFrom && from < SuspectUntil && unit == 'A' ? EachByItself : Counted;
        if (unit == 'A' && !survey && hour is >= 8 and < 16)
        {
            var small = retail.Pack(mill, hall, bin, flour, toLines / 4, from, until, hour == 14, scan, warehouse.Pallets);
            stock.Add(bin, -small);
            toLines -= small;
        }

        if (flour == Flour.AP && hour == 16 && MillCalendar.Wall(from).DayOfWeek == IsoDayOfWeek.Saturday)
        {
            toLines -= SoyMix(bin, from);
        }

        toLines = last && share == 1 && !survey ? stock[bin] : toLines;
        stock.Add(bin, -(unit == 'A' ? line1 : line3).Pack(mill, hall, bin, flour, toLines, from, until, last, scan, warehouse.Pallets));
    }

    /// <summary>Loads trucks with bulk flour and feed, and packs first clear, from what lies in the bins when a stretch begins.</summary>
    public void LoadOut(Instant from)
    {
        foreach (var (bin, what, spout) in Warehouse.InBulk)
        {
            if (stock[bin] >= 28_000_000)
            {
                const long load = 25_000_000;
                var code = warehouse.NewLoad(mill, what, from);
                var (begin, end) = (from + Duration.FromMinutes(20), from + Duration.FromMinutes(40));
                if (spout)
                {
                    mill.Move(bin, "SPOUT", load, begin, end);
                }

                mill.Move(spout ? "SPOUT" : bin, code, load, end);
                stock.Add(bin, -load);
            }
        }

        if (MillCalendar.Wall(from).Hour == 18 && stock["F-C1"] >= 10_000_000)
        {
            stock.Add("F-C1", -clears.Pack(mill, hall, "F-C1", Flour.C1, stock["F-C1"], from + Duration.FromMinutes(40), from + Duration.FromMinutes(120), true, Counted, warehouse.Pallets));
        }
    }

    // Malt and the rest fall into the flour in the mixer before its bin, as long as the feeder has any.
    private long Add(string mixer, Flour flour, string bin, long made, Instant from, Instant until)
    {
        Instant[] edges = flour == Flour.WB && from < NoMaltFrom && until > NoMaltUntil ? [from, NoMaltFrom, NoMaltUntil, until] : [from, until];
        var (added, passed) = (0L, 0L);
        for (var i = 1; i < edges.Length; i++)
        {
            var (begin, end) = (edges[i - 1], edges[i]);
            var flows = (long)(made * ((end - from) / (until - from))) - passed;
            passed += flows;
            foreach (var (kind, part) in Additives.For(flour))
            {
                if (kind == "MALT" && begin == NoMaltFrom)
                {
                    continue;
                }

                var grams = (long)(made * part * ((end - begin) / (until - from)));
                mill.Move(additives.Lot(mill, kind, from), mixer, grams, begin, end);
                added += grams;
                flows += grams;
            }

            mill.Move(mixer, bin, flows, begin, end);
        }

        return added;
    }

    // The only mix with soy: after it line 2 is flushed with flour that goes to waste.
    private long SoyMix(string bin, Instant from)
    {
        const long flour = 8_800_000, soy = 1_200_000, flush = 200_000;
        var (until, clean) = (from + Duration.FromMinutes(100), from + Duration.FromMinutes(120));
        mill.Move(bin, "L2", flour, from, until);
        mill.Move(additives.Lot(mill, "SOY", from), "L2", soy, from, until);
        soyMix.Wrap(hall, Flour.SM, flour + soy, from, until, Counted, warehouse.Pallets);
        mill.Move(bin, "L2", flush, until, clean);
        hall.Move("L2", "WASTE", flush, clean);
        hall.Happened("L2", clean, HappeningKind.State, "cleaned down after soy, flushed with 200 kg, checked by the packing lead");
        stock.Add(bin, -flour - flush);
        return flour + flush + 1_800_000; // line 1 leaves room, so that nothing is drawn faster than it is made
    }
}
