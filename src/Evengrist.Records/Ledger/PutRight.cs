using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Records.Ledger;

/// <summary>Puts a movement right by a further one that stands in for it. What is not given stays as it was; a mass of zero voids it.</summary>
/// <param name="Movement">Number of the movement that was recorded wrongly.</param>
/// <param name="Reason">Why, in the recorder's words; demanded.</param>
public sealed record PutRight(FactId Movement, string Reason)
{
    /// <summary>The true mass.</summary>
    public Mass? Mass { get; init; }

    /// <summary>Code of the place it truly left.</summary>
    public string? From { get; init; }

    /// <summary>Code of the place it truly went to.</summary>
    public string? To { get; init; }

    /// <summary>When it truly began.</summary>
    public Instant? At { get; init; }

    /// <summary>When it truly ended; by default it lasted as long as was first recorded.</summary>
    public Instant? Until { get; init; }

    /// <summary>Records the correction.</summary>
    /// <exception cref="LedgerRefusal">The number is no movement's, or it was put right already, or what would stand then breaks a rule.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Record(view => [Correction(view.Book)], by, "ledger", recorded);
    }

    private Move Correction(Book book)
    {
        var index = book.IndexOf(Movement);
        if (index < 0)
        {
            throw new LedgerRefusal(LedgerRule.BadCorrection, $"{Movement} is no movement. Look its number up on the ledger page.") { Index = 0 };
        }

        var earlier = book.Movements[index];
        var at = At ?? earlier.At;
        return new Move($"puts right {Movement.Value}", From ?? book[earlier.From].Code, To ?? book[earlier.To].Code, Mass ?? earlier.Mass, at, Until ?? at + (earlier.Until - earlier.At))
        {
            Corrects = Movement,
            Note = Reason,
        };
    }
}
