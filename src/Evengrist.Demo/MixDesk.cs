using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Wheat let out of a bin during a stretch.</summary>
internal readonly record struct Drawn(string Bin, long Grams, double Protein, double Moisture);

/// <summary>Opens the gates: by the early mix sheets, by the survey week's, and from then on by the groups of bins; in the weeks of the sheet book they give what they really give.</summary>
internal sealed class MixDesk(BinPlan plan, Larder larder, SheetBook book)
{
    // What is left of a bin that ran empty by the ledger while grain still came, or the other way: handling shrink, found at the end.
    private static readonly Duration HalfHour = Duration.FromMinutes(30);

    public IReadOnlyList<Drawn> Draw(Desk desk, char unit, Flour flour, Instant from, Instant until, Dice? dice)
    {
        var day = MillCalendar.MillingDay(from);
        if (dice is null)
        {
            return Survey(desk, from, until);
        }

        var early = day < MillCalendar.PlanDay;
        var gates = early ? EarlyMixes.For(flour, day) : Gates(desk, unit, flour, from, until);
        var tonnes = UnitRun.WheatPerHour(unit) * (until - from).TotalHours * (1 + dice.Normal(0, 0.002));
        var wanted = SheetBook.IsKept(day)
            ? book.Set(unit, flour, SheetBook.Moved(gates, day), from, until).Select(g => (g.Bin, Grams: (long)(g.TonnesPerHour * (until - from).TotalHours * 1e6))).ToList()
            : gates.Select(g => (g.Bin, Grams: (long)(g.Share * tonnes * 1e6))).ToList();
        if (early && unit == 'A')
        {
            Empty(desk, wanted, until);
        }

        MakeUp(wanted);

        return [.. wanted.Where(w => w.Grams > 0).Select(w => Take(desk, unit, w.Bin, w.Grams, from, until))];
    }

    // A bin gives no more than it has; the fullest of the others makes up for it.
    private void MakeUp(List<(string Bin, long Grams)> wanted)
    {
        for (var i = 0; i < wanted.Count; i++)
        {
            var missing = wanted[i].Grams - plan[wanted[i].Bin].Grams;
            if (missing > 0)
            {
                var other = Enumerable.Range(0, wanted.Count).Where(j => j != i).MaxBy(j => plan[wanted[j].Bin].Grams);
                wanted[i] = (wanted[i].Bin, wanted[i].Grams - missing);
                wanted[other] = (wanted[other].Bin, wanted[other].Grams + missing);
            }
        }
    }

    // The hold bins give what they have, and are run out on the last day; the first gate makes up for it.
    private void Empty(Desk desk, List<(string Bin, long Grams)> wanted, Instant until)
    {
        var last = until >= MillCalendar.At(MillCalendar.PlanDay.PlusDays(-2), 8);
        var afterUse = until >= MillCalendar.At(EarlyMixes.EighthWeek, 6);
        foreach (var bin in new[] { "B17", "B18", "B19" })
        {
            var i = wanted.FindIndex(w => w.Bin == bin);
            var asked = i < 0 ? 0 : wanted[i].Grams;
            var lies = plan[bin].Grams;
            var given = Math.Min(lies, last ? 12_000_000 : i >= 0 ? asked : afterUse && bin == "B18" ? 6_000_000 : 0);
            if (i >= 0)
            {
                wanted[i] = (bin, given);
            }
            else if (given > 0)
            {
                wanted.Add((bin, given));
            }

            wanted[0] = (wanted[0].Bin, wanted[0].Grams + asked - given);
            if (given > 0 && given == lies && !plan[bin].Awaits(until))
            {
                desk.Happened(bin, until, HappeningKind.ProvenEmpty, "run empty, swept and signed");
            }
        }
    }

    // Unit A at exactly 17.5 t/h: B14 7.0 t/h until it is empty, then B04 in its stead; B06 6.0 t/h; B05 4.5 t/h.
    private List<Drawn> Survey(Desk desk, Instant from, Instant until)
    {
        var hours = (until - from).TotalHours;
        var (wanted, lies) = ((long)(7_000_000 * hours), plan["B14"].Grams);
        List<Drawn> draws = [Take(desk, 'A', "B06", (long)(6_000_000 * hours), from, until), Take(desk, 'A', "B05", (long)(4_500_000 * hours), from, until)];
        if (lies == 0)
        {
            draws.Add(Take(desk, 'A', "B04", wanted, from, until));
        }
        else if (lies >= wanted)
        {
            draws.Add(Take(desk, 'A', "B14", wanted, from, until));
        }
        else
        {
            var empty = (from + Duration.FromSeconds(lies / 7_000_000.0 * 3600)).Cut();
            draws.Add(Take(desk, 'A', "B14", lies, from, empty));
            draws.Add(Take(desk, 'A', "B04", wanted - lies, empty, until));
            desk.Happened("B14", empty + HalfHour, HappeningKind.ProvenEmpty, "drawn out, swept and signed");
        }

        return draws;
    }

    private List<Gate> Gates(Desk desk, char unit, Flour flour, Instant from, Instant until)
    {
        var gates = new List<Gate>();
        foreach (var (group, share) in larder.Mix(flour))
        {
            var need = share * UnitRun.WheatPerHour(unit) * (until - from).TotalHours;
            if (plan[group.Current].Tonnes < 1.05 * need)
            {
                Change(desk, group, from);
            }

            gates.Add(new Gate(group.Current, share));
        }

        return gates;
    }

    // A bin that ran empty before its ledger did is squared: the rest was lost on the way; then it is swept and signed for.
    private void Change(Desk desk, BinGroup group, Instant at)
    {
        var left = plan[group.Current].Grams;
        if (group.Bins.Count == 1)
        {
            return;
        }

        if (left > 0)
        {
            desk.Move(group.Current, "SHORT", left, at);
            plan[group.Current].Draw(left);
        }

        if (!plan[group.Current].Awaits(at + HalfHour))
        {
            desk.Happened(group.Current, at + HalfHour, HappeningKind.ProvenEmpty, "run empty, swept and signed");
        }

        group.Current = group.Bins.MaxBy(b => plan[b].Tonnes)!;
    }

    private Drawn Take(Desk desk, char unit, string bin, long grams, Instant from, Instant until)
    {
        var (protein, moisture) = (plan[bin].Protein, plan[bin].Moisture);
        desk.Move(bin, $"MX{unit}", grams, from, until);
        plan[bin].Draw(grams);
        return new Drawn(bin, grams, protein, moisture);
    }
}
