using Evengrist.Packing.Orders;
using Evengrist.Records;
using Evengrist.Records.Packing;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Orders of the demonstration for the days after the opening moment; all invented.</summary>
public static class HouseOrders
{
    private const string Keeper = "Bess Arkwell";
    private static readonly Instant Taken = At(14, 6, 30);

    /// <summary>The orders. One is of a product whose label is not approved; one was called off.</summary>
    public static IReadOnlyList<PackingOrder> All { get; } =
    [
        Of("5101", "ORLAWICK-1", "WB-25", 120, At(14, 20)), Of("5102", "DUNMARRICK-1", "WB-25", 96, At(15, 4)), Of("5103", "ORLAWICK-2", "WB-25", 144, At(15, 14)), Of("5104", "DUNMARRICK-2", "WB-25", 120, At(15, 22)), Of("5105", "", "WB-25", 160, At(16, 12)),
        Of("5106", "ORLAWICK-1", "WB-2", 24, At(14, 20)), Of("5107", "ORLAWICK-2", "WB-2", 40, At(16, 6)),
        Of("5108", "ORLAWICK-2", "WB-BULK", 75, At(14, 16)), Of("5109", "DUNMARRICK-1", "WB-BULK", 75, At(15, 6)), Of("5110", "ORLAWICK-1", "WB-BULK", 75, At(15, 16)), Of("5111", "ORLAWICK-2", "WB-BULK", 75, At(16, 4)),
        Of("5112", "C5", "HG-25", 72, At(14, 20)), Of("5113", "C5", "HG-BULK", 50, At(15, 4)), Of("5114", "C5", "HG-25", 60, At(15, 6)),
        Of("5115", "C7", "C1-25", 24, At(14, 14)), Of("5116", "C7", "C1-25", 48, At(16, 16)), Of("5117", "C8", "C2-BULK", 25, At(15, 8)), Of("5118", "C8", "C2-BULK", 50, At(16, 8)),
        Of("5119", "C6", "PA-25", 96, At(16, 4)), Of("5120", "C6", "PA-BULK", 75, At(16, 12)), Of("5121", "C6", "PA-25", 96, At(16, 22)), Of("5122", "C6", "PA-BULK", 75, At(17, 6)),
        Of("5123", "BRIGHTCRUST", "AP-25", 144, At(16, 20)), Of("5124", "ORLAWICK-1", "AP-25", 160, At(17, 8)), Of("5125", "BRIGHTCRUST", "SM-1", 10, At(16, 18)), Of("5126", "ORLAWICK-2", "AP-2", 32, At(17, 6)),
        Of("5127", "ORLAWICK-2", "WW-2", 6, At(17, 12)),
        Of("5128", "ORLAWICK-1", "AP-25", 24, At(15, 10)) with { IsCancelled = true, Reason = "ordered twice; the customer keeps 5124" },
    ];

    /// <summary>Keeps the orders, and the plan made of them, as persons would.</summary>
    public static void Keep(Mill mill)
    {
        foreach (var order in All)
        {
            var kept = PackingOrders.Versions(mill, order.Number).Count;
            if (kept == 0 && PackingOrders.Keep(mill, order, Keeper, 0).Faults is { Count: > 0 } faults)
            {
                throw new InvalidOperationException(string.Join(" ", faults));
            }
        }

        // Made by turns, without a search: the same whatever machine lays the demonstration out.
        if (PackingPlans.Versions(mill).Count == 0 && new PlanRuns(MillCalendar.OpeningMoment) { Longest = TimeSpan.Zero }.In(mill).Plan is { } plan)
        {
            PackingPlans.Keep(mill, plan, "by due time in the morning, before anything was searched", HouseHall.Lead);
        }
    }

    private static PackingOrder Of(string number, string customer, string product, decimal tonnes, Instant due) => new($"SO-{number}", customer, product, tonnes * 1000, OrderUnit.Kilograms, due, Taken);

    private static Instant At(int day, int hour, int minute = 0) => MillCalendar.At(new LocalDate(2026, 1, day), hour, minute);
}
