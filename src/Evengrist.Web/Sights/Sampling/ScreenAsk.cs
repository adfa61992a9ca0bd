using System.Globalization;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Web.Sights.Trucks;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>A composite as a person types it: tickets, each with what its own test showed where it was made.</summary>
public sealed class ScreenAsk
{
    private ScreenAsk(IReadOnlyList<string> faults, ScreenSpec? spec) => (Faults, Spec) = (faults, spec);

    /// <summary>What is wrong, each a sentence.</summary>
    public IReadOnlyList<string> Faults { get; }

    /// <summary>The composite; null where the form cannot be read.</summary>
    public ScreenSpec? Spec { get; }

    /// <summary>Reads the form: tickets separated by spaces or lines, <c>25-0709-011=0.4</c> for one that was tested.</summary>
    public static ScreenAsk Read(TruckSighting sighting, Book book, string? tickets, string? limit, string? composite, TestCosts? costs)
    {
        ArgumentNullException.ThrowIfNull(sighting);
        ArgumentNullException.ThrowIfNull(book);
        var typed = new Typed();
        var most = typed.Number("limit", limit, "mg/kg", "the limit");
        var found = typed.Number("composite", composite, "mg/kg");
        var trucks = new List<ScreenTruck>();
        Place? source = null;
        TruckSight? newest = null;
        foreach (var part in (tickets ?? "").Split([' ', '\n', '\r', '\t', ',', ';'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Take(101))
        {
            var (code, own) = part.Split('=', 2) is [var ticket, var result] ? (ticket, typed.Number("tickets", result, "mg/kg")) : (part, null);
            if (book.Find(code) is not { Kind: PlaceKind.Truck } place || sighting.Look(place) is not { } truck)
            {
                typed.Fault("tickets", $"There is no ticket “{code}” by this moment. Write tickets with a space between them, 25-0709-011=0.4 for one whose own sample was tested.");
                continue;
            }

            trucks.Add(new ScreenTruck(place.Code, truck.Net, own));
            (source, newest) = newest is null || truck.At > newest.At ? (truck.Source, truck) : (source, newest);
        }

        string[] faults = [.. typed.Faults.Select(f => f.Fault), .. typed.Missing.Select(m => $"Still needed: {m}.")];
        if (faults.Length > 0)
        {
            return new ScreenAsk(faults, null);
        }

        var prior = source is not null && costs?.Of(Property.Don) is { } test ? DistrictHistory.Of(book, source, Property.Don, newest!.At, costs.HistoryDays).Prior(test) as PriorFound : null;
        var spec = new ScreenSpec(most!.Value, found, trucks) { Prior = prior?.Prior };
        return spec.Faults() is { Count: > 0 } wrong ? new ScreenAsk(wrong, null) : new ScreenAsk([], spec);
    }

    /// <summary>A number of mg/kg in few digits.</summary>
    public static string Mg(decimal value) => value.ToString("0.###", CultureInfo.InvariantCulture);
}
