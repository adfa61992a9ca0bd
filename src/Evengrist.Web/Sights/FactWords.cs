using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>Facts in plain sentences.</summary>
public static class FactWords
{
    /// <summary>The sort of a fact in a word.</summary>
    public static string Sort(Fact fact) => fact switch
    {
        PlaceOpened => "place",
        Connected => "connection",
        Moved => "movement",
        Measured => "reading",
        _ => "happening",
    };

    /// <summary>When what it tells happened; when it was recorded for a place or a connection.</summary>
    public static Instant When(Fact fact)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return fact switch
        {
            Moved moved => moved.Movement.At,
            Measured measured => measured.Reading.At,
            Happened happened => happened.Happening.At,
            _ => fact.Attribution.Recorded,
        };
    }

    /// <summary>The places a fact speaks of.</summary>
    public static IReadOnlyList<PlaceId> Places(Fact fact) => fact switch
    {
        PlaceOpened opened => [opened.Place.Id],
        Connected connected => [connected.From, connected.To],
        Moved moved => [moved.Movement.From, moved.Movement.To],
        Measured measured => [measured.Reading.On],
        Happened happened => [happened.Happening.On],
        _ => [],
    };

    /// <summary>What it tells, without the places' codes where a table shows them apart.</summary>
    public static string Says(Fact fact, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(fact);
        return fact switch
        {
            PlaceOpened { Place: var p } => $"opened as {p.Kind.Words()}{(p.Name.Length > 0 ? $", {p.Name}" : "")}{(p.Material.Length > 0 ? $", {p.Material}" : "")}{(p.Capacity is { } most ? $", holds {Shown.Weight(most, units)}" : "")}",
            Connected => "connected: grain can go from the first to the second",
            Moved { Movement: var m } => m.Mass == Mass.Zero ? "void: nothing moved" : $"{Weight(m.Mass, units)} moved{(m.IsFlow ? $" over {Span(m.Until - m.At)}" : "")}",
            Measured { Reading: var r } => Reading(r, units),
            Happened { Happening: var h } => $"{Words(h.Kind)}{(h.Words.Length > 0 ? ": " + h.Words : "")}",
            _ => "",
        };
    }

    /// <summary>What happened in words.</summary>
    public static string Words(HappeningKind kind) => kind switch
    {
        HappeningKind.ProvenEmpty => "proven empty",
        HappeningKind.Held => "put on hold",
        HappeningKind.Released => "released from hold",
        HappeningKind.Contract => "settled under contract",
        HappeningKind.Arrived => "at the gate",
        HappeningKind.UnderGas => "under gas",
        HappeningKind.GasCleared => "cleared of gas",
        HappeningKind.PersonInside => "person inside",
        HappeningKind.PersonOut => "nobody inside any more",
        HappeningKind.Swept => "cleaned out",
        HappeningKind.Tempered => "tempering",
        _ => kind.ToString().ToLowerInvariant(),
    };

    private static string Reading(Reading reading, UnitSystem units)
    {
        // A test weight keeps the convention it was read in: its unit alone does not tell the formula.
        var value = reading.What == Property.TestWeight ? $"{reading.Value.ToString(CultureInfo.InvariantCulture)} {reading.Unit}" : Shown.Number(reading.Value, reading.Unit, reading.Value.Scale, units).ToString();
        var basis = reading.Basis.IsStated ? " " + reading.Basis : "";
        var plusMinus = reading.StandardUncertainty is { } one ? " ± " + (2 * one).ToString("0.###", CultureInfo.InvariantCulture) : "";
        return $"{reading.What.Words()} {value}{basis}{plusMinus}, {reading.Method}{(reading.Instrument.Length > 0 ? ", " + reading.Instrument : "")}";
    }

    // Whole kilograms bare, the rest to the gram.
    private static ShownValue Weight(Mass mass, UnitSystem units) => Shown.Weight(mass, units, mass.Grams % 1000 == 0 && units == UnitSystem.Si ? 0 : 3);

    private static string Span(Duration span) => span.TotalHours >= 1
        ? string.Create(CultureInfo.InvariantCulture, $"{span.TotalHours:0.#} h")
        : string.Create(CultureInfo.InvariantCulture, $"{span.TotalMinutes:0} min");
}
