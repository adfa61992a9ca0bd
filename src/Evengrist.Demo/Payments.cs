using Evengrist.Intake;
using Evengrist.Intake.Paying;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Intake;
using NodaTime;

namespace Evengrist.Demo;

/// <summary>Payments of the demonstration: one grower asks for advances at delivery and is settled in September, another for a fixed advance; one load is read again afterwards. Recorded through the use case a person's go through.</summary>
internal static class Payments
{
    private const string Office = "Ines Calloway";
    private const int PaidOutAt = 20;
    private static readonly LocalDate SettledOn = new(2025, 9, 22);
    private static readonly LocalDate SettledUntil = new(2025, 8, 5);
    private static readonly LocalDate WithoutCertificate = new(2025, 8, 19);
    private static readonly LocalDate ReadAgainOn = new(2025, 12, 12);
    private static readonly AdvanceRule Seventy = new PercentOfPay(70m);
    private static readonly AdvanceRule Fixed = new FixedPerTonne(Money.Of(160m, "USD"));

    /// <summary>Pays; a ticket that was paid already is left alone, so that a load stopped half-way can go on.</summary>
    public static void Record(Mill mill)
    {
        Advance(mill, "WL-", Seventy);
        Advance(mill, "TQ-", Fixed);
        Settle(mill);
        ReadAgain(mill);
    }

    private static void Advance(Mill mill, string fields, AdvanceRule rule)
    {
        foreach (var day in Trucks(mill, fields, paid: 0).GroupBy(t => t.Day).Where(d => d.Key != WithoutCertificate))
        {
            var at = MillCalendar.At(day.Key, PaidOutAt, 30);
            new PayTickets([.. day.Select(t => t.Ticket)], rule, at).In(mill, Office, at);
        }
    }

    private static void Settle(Mill mill)
    {
        var at = MillCalendar.At(SettledOn, 10);
        if (Trucks(mill, "WL-", paid: 1).Where(t => t.Day <= SettledUntil).Select(t => t.Ticket).ToArray() is { Length: > 0 } tickets)
        {
            new PayTickets(tickets, null, at).In(mill, Office, at);
        }
    }

    // The retained sample of a settled load is burnt in December and shows more protein: there is something to pay.
    private static void ReadAgain(Mill mill)
    {
        var at = MillCalendar.At(ReadAgainOn, 14);
        var found = mill.Ask(view =>
        {
            var truck = view.Book.OfKind(PlaceKind.Truck).FirstOrDefault(t => view.Book.HappeningsOn(t.Id).Count(h => h.Kind == HappeningKind.Settled) == 2
                && view.Book.ReadingsOn(t.Id).First(r => r.What == Property.Protein).Value is > 11.2m and < 11.5m);
            return truck is null ? ((string Ticket, decimal Protein)?)null : (truck.Code, view.Book.ReadingsOn(truck.Id).First(r => r.What == Property.Protein).Value);
        });
        if (found is not var (ticket, protein))
        {
            return;
        }

        mill.Record([new Measure("1", ticket, at, Property.Protein, protein + 0.4m, "%", Basis.At12, "combustion", "N-2", 0.15m)], "Femi Strand", "laboratory, retained samples", at);
    }

    private static List<(string Ticket, LocalDate Day)> Trucks(Mill mill, string fields, int paid) => mill.Ask(view => view.Book.OfKind(PlaceKind.Field).Where(f => f.Code.StartsWith(fields, StringComparison.Ordinal))
        .SelectMany(f => view.Book.MovementsOf(f.Id)).Order().Select(i => view.Book.Movements[i])
        .Where(m => view.Book.HappeningsOn(m.To).Count(h => h.Kind == HappeningKind.Settled) == paid)
        .Select(m => (view.Book[m.To].Code, TicketNumber.TryParse(view.Book[m.To].Code, out var number) ? number.Day : MillCalendar.MillingDay(m.At))).ToList());
}
