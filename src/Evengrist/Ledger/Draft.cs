using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact as a person, a file or an instrument states it: places by code, no number yet.</summary>
/// <param name="Key">The source's own key of the fact; unique within the source and the sort of fact.</param>
public abstract record Draft(string Key)
{
    /// <summary>The number of the earlier fact of the same sort that this one stands in for; null for a new fact.</summary>
    public FactId? Corrects { get; init; }

    /// <summary>Why, in the recorder's words; demanded of a correction.</summary>
    public string? Note { get; init; }
}

/// <summary>Open a place.</summary>
/// <param name="Key">The source's own key.</param>
/// <param name="Code">What people call it; unique, case does not matter.</param>
/// <param name="Kind">What sort of place.</param>
/// <param name="Name">A longer name, or the plate of a truck.</param>
/// <param name="Material">The wheat class, flour or additive.</param>
public sealed record OpenPlace(string Key, string Code, PlaceKind Kind, string Name = "", string Material = "") : Draft(Key)
{
    /// <summary>The most it may hold; null for no limit.</summary>
    public Mass? Capacity { get; init; }

    /// <summary>What it belongs to, in words.</summary>
    public string Of { get; init; } = "";

    /// <summary>Share of every layer over the outlet, 0 to 1.</summary>
    public double CoreShare { get; init; } = 0.1;

    /// <summary>Stirred stage at the outlet of a flow-through place.</summary>
    public Mass Stirred { get; init; }
}

/// <summary>Connect two fixed places.</summary>
/// <param name="Key">The source's own key.</param>
/// <param name="From">Code of the place where grain leaves.</param>
/// <param name="To">Code of the place where it goes.</param>
public sealed record Connect(string Key, string From, string To) : Draft(Key);

/// <summary>Move grams from a place to a place.</summary>
/// <param name="Key">The source's own key.</param>
/// <param name="From">Code of the place where it left.</param>
/// <param name="To">Code of the place where it went.</param>
/// <param name="Mass">How much, as it lay.</param>
/// <param name="At">When it began.</param>
/// <param name="Until">When it ended; null for at once.</param>
public sealed record Move(string Key, string From, string To, Mass Mass, Instant At, Instant? Until = null) : Draft(Key);

/// <summary>Record a reading.</summary>
/// <param name="Key">The source's own key.</param>
/// <param name="On">Code of the place whose content was sampled.</param>
/// <param name="At">When the sample was taken.</param>
/// <param name="What">The property.</param>
/// <param name="Value">The value as reported.</param>
/// <param name="Unit">The unit with its convention.</param>
/// <param name="Basis">The moisture basis; default where the property has none.</param>
/// <param name="Method">How it was measured.</param>
/// <param name="Instrument">With what.</param>
/// <param name="StandardUncertainty">One standard uncertainty, in the unit of the value.</param>
public sealed record Measure(
    string Key, string On, Instant At, Property What, decimal Value, string Unit, Basis Basis,
    string Method, string Instrument = "", decimal? StandardUncertainty = null) : Draft(Key);

/// <summary>Record that something happened to a place without grain being moved.</summary>
/// <param name="Key">The source's own key.</param>
/// <param name="On">Code of the place.</param>
/// <param name="At">When.</param>
/// <param name="Kind">What.</param>
/// <param name="Text">The reason or the state in words.</param>
public sealed record Happen(string Key, string On, Instant At, HappeningKind Kind, string Text = "") : Draft(Key);
