using NodaTime;

namespace Evengrist.Ledger;

/// <summary>A fact: something happened to a place without grain being moved: proven empty, held, released, a state, a note.</summary>
/// <param name="Id">The number of the fact.</param>
/// <param name="On">The place.</param>
/// <param name="At">When.</param>
/// <param name="Kind">What happened.</param>
/// <param name="Text">The reason or the state in words; never empty for a hold, a release or a state.</param>
public sealed record Happening(FactId Id, PlaceId On, Instant At, HappeningKind Kind, string Text = "");
