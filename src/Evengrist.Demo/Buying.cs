using NodaTime;

namespace Evengrist.Demo;

/// <summary>Wheat bought from the country elevators: what the plan of 15 September still wants, then day by day what has the least cover.</summary>
internal sealed class Buying(ulong seed, BinPlan plan, Tickets tickets, EarlyNeed need)
{
    private static readonly LocalDate HarvestIn = new(2025, 7, 21);
    private static readonly string[] Harvested = ["B01", "B02", "B03"];
    private const double PerRunDay = 317; // t: with the early purchases 91 200 t in the year
    private static readonly District Bought = new("bought", "HW", 0, 0.3, 12.0, 0.4, 79, 0.9, 385, 20, 0.2, 30);
    private readonly Dice dice = new(seed, "buying");
    private double owed;

    /// <summary>Tonnes bought so far.</summary>
    public double Tonnes { get; private set; }

    public void Day(LocalDate day, Desk desk, Larder larder)
    {
        if (!MillCalendar.Runs(day) || Receiving.IsReceivingDay(day))
        {
            return;
        }

        if (day < MillCalendar.PlanDay)
        {
            Early(day, desk);
            return;
        }

        owed += PerRunDay;
        for (var i = 0; owed >= 13; i++)
        {
            var want = larder.LeastCovered();
            owed -= Truck(day, desk, i, want.RoomFor(plan), want.Protein, 26);
        }
    }

    private void Early(LocalDate day, Desk desk)
    {
        var days = 0;
        for (var d = day; d < MillCalendar.PlanDay; d = d.PlusDays(1))
        {
            days += MillCalendar.Runs(d) && !Receiving.IsReceivingDay(d) ? 1 : 0;
        }

        var wanted = EarlyNeed.BoughtProtein.Keys.Where(b => day > HarvestIn || !Harvested.Contains(b)).ToDictionary(b => b, b => need.StillToCome(b, day, plan[b].Tonnes));
        var today = wanted.Values.Where(t => t > 0).Sum() / days;
        for (var i = 0; today > 13 || (days == 1 && wanted.Values.Any(t => t > 10)); i++)
        {
            var bin = wanted.Where(w => plan[w.Key].FreeTonnes > 30 || days == 1).MaxBy(w => w.Value * (w.Key == "B06" ? 3 : 1)).Key;
            var tonnes = Truck(day, desk, i, bin, EarlyNeed.BoughtProtein[bin], wanted[bin]);
            wanted[bin] -= tonnes;
            today -= tonnes;
        }
    }

    private double Truck(LocalDate day, Desk desk, int i, string bin, double protein, double most)
    {
        var net = 20 * (int)Math.Round(dice.Normal(1300, 30, 1200, 1400));
        if (most is > 10 and < 27)
        {
            net = 20 * (int)Math.Round(most * 50);
        }

        var at = MillCalendar.At(day, 6, 40) + Duration.FromSeconds((long)((i + (0.8 * dice.Even())) * 1300));
        var wheat = plan[bin].Material;
        var district = Bought with { Class = wheat, TestWeight = wheat == "SW" ? 77.5 : 79.3, Falling = wheat == "SW" ? 340 : 388 };
        var ticket = tickets.Write(desk, dice.Chance(0.4) ? "E1" : "E2", wheat, "merchant", district, net, day, at, bin, dice.Normal(protein, 0.3), full: false);
        plan[bin].Await(ticket.Moves[^1].At, net * 1000L, ticket.Protein, ticket.Moisture);
        Tonnes += net / 1000.0;
        return net / 1000.0;
    }
}
