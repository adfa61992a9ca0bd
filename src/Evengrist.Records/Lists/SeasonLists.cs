using Evengrist.Ledger;
using Evengrist.Quantities.Lists;
using Evengrist.Records.Season;
using Evengrist.Season;

namespace Evengrist.Records.Lists;

/// <summary>Kept plans of a crop year; all of their figures are reckoned.</summary>
internal static class SeasonLists
{
    public static IReadOnlyList<MillList> All { get; } =
    [
        MillList.Of("season-uses", "Kept plans: wheat to mill, a row for each wheat, flour and period", Headed<PlannedUse>().Text("wheat", r => r.Row.Wheat).Text("flour", r => r.Row.Flour).Day("period begins", r => Begins(r.Kept, r.Row.Period)).Reckoned("to mill", ListUnit.Tonne, r => r.Row.Tonnes), (mill, ask) => Rows(mill, ask, p => p.Uses)),
        MillList.Of("season-flours", "Kept plans: flour, a row for each flour and period", Headed<PlannedFlour>().Text("flour", r => r.Row.Flour).Day("period begins", r => Begins(r.Kept, r.Row.Period)).Reckoned("wheat", ListUnit.Tonne, r => r.Row.WheatTonnes).Reckoned("flour made", ListUnit.Tonne, r => r.Row.FlourTonnes)
            .Reckoned("hours", ListUnit.Hour, r => r.Row.Hours).Reckoned("not met", ListUnit.Tonne, r => r.Row.UnmetTonnes).Reckoned("in stock at the end", ListUnit.Tonne, r => r.Row.StockTonnes), (mill, ask) => Rows(mill, ask, p => p.Flours)),
        MillList.Of("season-purchases", "Kept plans: wheat to buy, a row for each offer and period", Headed<PlannedPurchase>().Text("offer", r => r.Row.Offer).Whole("step of its price", r => r.Row.Tier + 1).Day("period begins", r => Begins(r.Kept, r.Row.Period)).Reckoned("to buy", ListUnit.Tonne, r => r.Row.Tonnes), (mill, ask) => Rows(mill, ask, p => p.Purchases)),
        MillList.Of("season-misses", "Kept plans: limits that are not kept, a row for each flour, period and property", Headed<PlannedMiss>().Text("flour", r => r.Row.Flour).Day("period begins", r => Begins(r.Kept, r.Row.Period)).Text("property", r => r.Row.What.Words()).Text("which way", r => r.Row.IsBelow ? "below the least" : "above the most")
            .Reckoned("off by", null, r => r.Row.Amount).Unit(r => Readings.UnitsOf(r.Row.What)[0]).Reckoned("wheat mix that is off", ListUnit.Tonne, r => r.Row.Tonnes).Reckoned("is taken to cost", null, r => r.Row.Cost), (mill, ask) => Rows(mill, ask, p => p.Misses)),
        MillList.Of("season-stocks", "Kept plans: wheat at the end of each period", Headed<PlannedStock>().Text("wheat", r => r.Row.Wheat).Day("period begins", r => Begins(r.Kept, r.Row.Period)).Reckoned("lies there at the end", ListUnit.Tonne, r => r.Row.Tonnes), (mill, ask) => Rows(mill, ask, p => p.Stocks)),
    ];

    private static ListOf<(KeptPlans Kept, T Row)> Headed<T>() => new ListOf<(KeptPlans Kept, T Row)>().Text("plan", r => r.Kept.Name).Moment("kept", r => r.Kept.Recorded).Text("kept by", r => r.Kept.By);

    private static NodaTime.LocalDate? Begins(KeptPlans kept, int period) => period >= 0 && period < kept.Plan.Spec.Periods.Count ? kept.Plan.Spec.Periods[period].Start : null;

    private static IEnumerable<(KeptPlans Kept, T Row)> Rows<T>(Mill mill, ListAsk ask, Func<SeasonPlan, IEnumerable<T>> rows) => KeptPlans.All(mill).Where(k => ask.Names(k.Name)).SelectMany(k => rows(k.Plan).Select(r => (k, r)));
}
