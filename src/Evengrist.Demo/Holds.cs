using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Pallets put on hold by the laboratory and released again by a named person, through the year.</summary>
internal sealed class Holds(ulong seed, Rework rework)
{
    private static readonly (Flour Flour, Instant From, Instant Until, Instant Held, int Days, string Why, string Released)[] Named =
    [
        (Flour.WB, At(10, 7, 10, 20), At(10, 8, 6, 0), At(10, 8, 6, 30), 2, "flour NIR read protein 0.28 too high: judge again by the reference", "judged again with the bias taken off: within 11.7 to 12.1; released by Dr Anya Holt"),
        (Flour.WB, At(10, 8, 6, 0), At(10, 8, 13, 0), At(10, 9, 6, 30), 2, "flour NIR read protein 0.28 too high: judge again by the reference", "judged again with the bias taken off: within 11.7 to 12.1; released by Dr Anya Holt"),
        (Flour.WB, At(12, 2, 14, 10), At(12, 2, 15, 0), At(12, 3, 6, 30), 3, "no malt from 14:10 to 14:35: falling number to be tested", "falling number 338 s: to the bakery that malts its own; released by Dr Anya Holt"),
    ];

    private readonly Dice dice = new(seed, "holds");
    private readonly List<(string Pallet, Instant At, string Text)> due = [];

    /// <summary>Holds and releases of a day; a pallet on hold does not leave.</summary>
    public void Day(Desk lab, Warehouse warehouse, LocalDate day)
    {
        foreach (var (pallet, at, text) in due.Where(d => MillCalendar.Wall(d.At).Date == day))
        {
            lab.Happened(pallet, at, HappeningKind.Released, text);
        }

        due.RemoveAll(d => MillCalendar.Wall(d.At).Date == day);
        foreach (var hold in Named.Where(h => MillCalendar.Wall(h.Held).Date == day))
        {
            Hold(lab, warehouse.Standing.Where(p => p.Flour == hold.Flour && p.At >= hold.From && p.At < hold.Until), hold.Held, hold.Days, hold.Why, hold.Released);
        }

        if (MillCalendar.Runs(day) && dice.Chance(0.06))
        {
            var fresh = warehouse.Standing.Where(p => p.NotBefore is null && p.At > MillCalendar.At(day, 0)).Take(dice.Whole(3, 8)).ToList();
            var days = dice.Whole(1, 3);
            var bad = fresh.Count > 0 && fresh[0].Flour is Flour.WB or Flour.AP && !MillCalendar.SurveyWeek(day) && dice.Chance(0.5);
            Hold(lab, fresh, MillCalendar.At(day, 6, 20), days, "ash above the limit on one NIR reading",
                bad ? "furnace ash above the limit too: to rework; released for that by Femi Strand" : "furnace ash within the limit; released by Femi Strand");
            if (bad)
            {
                var same = fresh.Where(p => p.Flour == fresh[0].Flour).ToList();
                warehouse.Remove(same);
                rework.Take(same, MillCalendar.At(day.PlusDays(days), 14));
            }
        }
    }

    private void Hold(Desk lab, IEnumerable<StandingPallet> pallets, Instant at, int days, string why, string released)
    {
        foreach (var pallet in pallets)
        {
            pallet.NotBefore = at + Duration.FromDays(days) + Duration.FromHours(1);
            lab.Happened(pallet.Code, at, HappeningKind.Held, why);
            due.Add((pallet.Code, at + Duration.FromDays(days), released));
        }
    }

    private static Instant At(int month, int day, int hour, int minute) => MillCalendar.At(new LocalDate(2025, month, day), hour, minute);
}
