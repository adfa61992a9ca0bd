using Evengrist.Intake;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Records;
using Evengrist.Records.Intake;
using MathNet.Numerics.Statistics;
using NodaTime;

namespace Evengrist.Web.Sights.Trucks;

/// <summary>Looks at the yard at one moment.</summary>
/// <param name="book">The ledger.</param>
/// <param name="at">The moment.</param>
/// <param name="bookings">The booked slots.</param>
/// <param name="settings">Zone and milling day.</param>
/// <param name="lanes">Trucks served at once; null for as many as there are pits.</param>
public sealed class YardSighting(Book book, Instant at, Bookings bookings, MillSettings settings, int? lanes = null)
{
    private static readonly Duration LongestStay = Duration.FromDays(3);

    /// <summary>The yard.</summary>
    public YardSight Look()
    {
        var day = DayOf(at);
        var trucks = Here(book.OfKind(PlaceKind.Truck)).ToArray();
        var today = trucks.Where(t => DayOf(t.State.Came) == day).ToArray();
        YardTruck[] inYard = [.. trucks.Where(t => t.State.InYard).OrderBy(t => t.State.Stage).ThenBy(t => t.State.Since)];
        var slots = bookings.Of(day, settings);
        var used = trucks.Select(t => Arrival.Of(book, t.Truck)?.Booking ?? "").ToHashSet(StringComparer.OrdinalIgnoreCase);
        Booking[] expected = [.. slots.Where(s => !used.Contains(s.Code))];
        double[] services = [.. today.Select(t => (Full: t.State.When(TruckStage.Weighed), Empty: t.State.When(TruckStage.Empty))).Where(t => t.Full < t.Empty).Select(t => (t.Empty!.Value - t.Full!.Value).TotalMinutes)];
        var served = lanes ?? Math.Max(1, book.OfKind(PlaceKind.Pit).Count());
        var emptied = today.Where(t => t.State.When(TruckStage.Empty) is not null && t.State.Stage != TruckStage.Voided).Select(t => (t.State.Bin, Net: Net(t.Truck))).ToArray();
        return new YardSight
        {
            At = at, Day = day, InYard = inYard, Expected = expected, Hours = Hours(today, slots, expected), Came = today.Length, Emptied = emptied.Length,
            TurnedAway = today.Count(t => t.State.Stage == TruckStage.TurnedAway), Net = Mass.FromGrams(emptied.Sum(t => t.Net.Grams)),
            ByBin = [.. emptied.GroupBy(t => t.Bin).Select(g => (g.Key, g.Count(), Mass.FromGrams(g.Sum(t => t.Net.Grams)))).OrderByDescending(g => g.Item3)],
            Pits = [.. book.OfKind(PlaceKind.Pit).Select(p => (p.Code, (IReadOnlyList<YardTruck>)[.. inYard.Where(t => t.Way.Split(" | ")[0] == p.Code)], LastTipped(p)))],
            Services = services, Lanes = served,
            Forecast = Forecast(inYard, [.. expected.Select(Minutes)], services, served),
            ComesNow = (Forecast(inYard, [0], services, served) as YardForecast)?.Waits[^1],
        };
    }

    /// <summary>A truck of a plate that stands in the yard; null where there is none but the one opened under the key.</summary>
    public YardTruck? InYardAs(string plate, string? key) => plate.Length == 0 ? null
        : Here(book.OfKind(PlaceKind.Truck).Where(t => t.Name.Equals(plate, StringComparison.OrdinalIgnoreCase))).FirstOrDefault(t => t.State.InYard && Arrival.Of(book, t.Truck)?.Key != key);

    private IEnumerable<YardTruck> Here(IEnumerable<Place> trucks) => trucks.Where(t => Came(t) is { } came && came <= at && came > at - LongestStay).Select(Truck).OfType<YardTruck>();

    private LocalDate DayOf(Instant moment) => MillingDay.Of(moment, settings.Zone, settings.DayStart);

    // The first thing that is known of a truck, without its whole way being read.
    private Instant? Came(Place truck) => new[]
    {
        book.HappeningsOn(truck.Id) is [var happened, ..] ? happened.At : (Instant?)null,
        book.ReadingsOn(truck.Id) is [var read, ..] ? read.At : null,
    }.Min() ?? book.MovementsOf(truck.Id).Select(i => (Instant?)book.Movements[i].At).FirstOrDefault();

    private YardTruck? Truck(Place truck)
    {
        if (TruckStages.Of(book, truck, at) is not { } state)
        {
            return null;
        }

        var way = LoadWay.Of(book, truck, at);
        var decided = state.Stage == TruckStage.SentTo && book.HappeningsOn(truck.Id).LastOrDefault(h => h.Kind == HappeningKind.Decided && h.At <= at) is { } last ? LoadDecision.Read(last)?.Way : null;
        var stops = decided ?? [.. way.Where(m => book[m.To].Kind is PlaceKind.Pit or PlaceKind.Leg).Select(m => book[m.To].Code)];
        var from = way.Count > 0 ? book[way[0].From].Code : Arrival.Of(book, truck)?.From ?? "";
        return new YardTruck(truck, state, from, string.Join(" | ", stops), at);
    }

    private Mass Net(Place truck) => Truckload.WeighingOf(Truckload.Readings(book, truck, at))?.Net ?? Mass.FromGrams(LoadWay.Of(book, truck, at).Where(m => m.To == truck.Id).Sum(m => m.Mass.Grams));

    private Instant? LastTipped(Place pit) => book.MovementsOf(pit.Id).Select(i => book.Movements[i]).Where(m => m.To == pit.Id && m.At <= at).Select(m => (Instant?)m.At).LastOrDefault();

    // A slot whose time is past is expected any moment.
    private double Minutes(Booking slot) => Math.Max(0, (slot.At - at).TotalMinutes);

    // One that was set aside holds no lane; one at the gate has waited since it came.
    private static YardOutcome Forecast(YardTruck[] inYard, double[] expected, double[] services, int lanes)
    {
        if (services.Length == 0)
        {
            return new NoYardForecast(["No truck has been weighed full and empty today: how long one takes is not known yet."]);
        }

        var served = inYard.Where(t => t.State.Stage is not (TruckStage.AtGate or TruckStage.SetAside));
        var waiting = inYard.Where(t => t.State.Stage == TruckStage.AtGate).Select(t => -(t.At - t.State.Since).TotalMinutes);
        var spread = services.Length > 1 ? services.StandardDeviation() : 0;
        return YardModel.Forecast(new YardSpec(lanes, services.Median(), spread, [.. served.Select(t => Math.Max(0, (t.At - (t.State.When(TruckStage.Weighed) ?? t.State.Came)).TotalMinutes))], [.. waiting, .. expected]));
    }

    private IReadOnlyList<YardHour> Hours(YardTruck[] today, IReadOnlyList<Booking> slots, Booking[] expected)
    {
        LocalDateTime Hour(Instant moment) => moment.InZone(settings.Zone).LocalDateTime.Date + new LocalTime(moment.InZone(settings.Zone).Hour, 0);
        int Count(IEnumerable<Instant> moments, LocalDateTime hour) => moments.Count(m => Hour(m) == hour);
        return [.. today.Select(t => Hour(t.State.Came)).Concat(slots.Select(s => Hour(s.At))).Distinct().Order().Select(h => new YardHour(
            $"{h.Hour:00}:00", Count(slots.Select(s => s.At), h), Count(today.Select(t => t.State.Came), h), Count(expected.Select(s => s.At), h)))];
    }
}
