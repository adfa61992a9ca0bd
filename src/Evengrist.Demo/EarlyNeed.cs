using NodaTime;

namespace Evengrist.Demo;

/// <summary>What each bin gives to the mixes before 15 September and so must still get, to stand as planned on that morning.</summary>
internal sealed class EarlyNeed
{
    private readonly BinPlan plan;
    private readonly List<(Instant From, string Bin, double Tonnes)> draws = [];

    public EarlyNeed(BinPlan plan)
    {
        this.plan = plan;
        foreach (var unit in "AB")
        {
            foreach (var (from, until) in UnitRun.Slots().TakeWhile(s => s.From < MillCalendar.At(MillCalendar.PlanDay, 6)))
            {
                foreach (var gate in EarlyMixes.For(UnitRun.Drawing(unit, from), MillCalendar.MillingDay(from)))
                {
                    draws.Add((from, gate.Bin, gate.Share * UnitRun.WheatPerHour(unit) * (until - from).TotalHours));
                }
            }
        }
    }

    /// <summary>Bins that bought wheat goes to before 15 September, and its protein, per cent 12mb.</summary>
    public static IReadOnlyDictionary<string, double> BoughtProtein { get; } = new Dictionary<string, double>
    {
        ["B01"] = 12.0, ["B02"] = 12.3, ["B03"] = 12.7, ["B06"] = 13.4, ["B17"] = 14.3, ["B19"] = 14.3,
    };

    /// <summary>Tonnes of the harvest meant for each bin.</summary>
    public IReadOnlyDictionary<string, double> Quotas() => BinPlan.Harvest.ToDictionary(
        h => h.Key, h => BoughtProtein.ContainsKey(h.Key) ? h.Value : StillToCome(h.Key, MillCalendar.FirstDay, BinPlan.Opening.Where(o => o.Bin == h.Key).Sum(o => o.Tonnes)));

    /// <summary>Tonnes that must still come into a bin from a day on.</summary>
    public double StillToCome(string bin, LocalDate day, double stock) =>
        plan[bin].PlanTonnes + Drawn(bin, MillCalendar.At(day, 6)) - stock;

    public double Drawn(string bin, Instant from) => draws.Where(d => d.Bin == bin && d.From >= from).Sum(d => d.Tonnes);
}
