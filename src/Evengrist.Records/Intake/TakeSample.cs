using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Intake;

/// <summary>A sample was taken from a load, and a part of it may stand on a shelf.</summary>
/// <param name="Ticket">The ticket number.</param>
/// <param name="At">When the last probe was drawn.</param>
/// <param name="Taken">By which rule, how much, and what was kept.</param>
public sealed record TakeSample(string Ticket, Instant At, SampleTaken Taken)
{
    private const string Source = "sampling";

    /// <summary>Number of the newest fact that was seen on the ticket; null where nobody looked.</summary>
    public FactId? Seen { get; init; }

    /// <summary>Records it. The same sample sent again is not recorded again.</summary>
    /// <exception cref="LedgerRefusal">There is no such truck, the particulars cannot be, another sample stands under the same number, or the ticket was changed meanwhile; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (Taken.Faults() is { Count: > 0 } faults)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, $"{Ticket}: {string.Join(" ", faults)}") { Place = Ticket };
        }

        return mill.Record(
            view =>
            {
                var truck = view.Book.Named(Ticket);
                if (truck.Kind != PlaceKind.Truck)
                {
                    throw new LedgerRefusal(LedgerRule.Malformed, $"{Ticket} is no truck: a sample is taken from a load.") { Place = Ticket };
                }

                var sample = new Happen($"{truck.Code} sample {At.ToMicros()}", truck.Code, At, HappeningKind.Sampled, Taken.Text);
                if (Taken.IsRetained && RetainedSample.All(view.Book, Instant.MaxValue).FirstOrDefault(s => s.Taken.RetainedId.Equals(Taken.RetainedId, StringComparison.OrdinalIgnoreCase)) is { } other
                    && (other.Load.Id != truck.Id || other.At != At))
                {
                    throw new LedgerRefusal(LedgerRule.KeyTaken, $"Number {Taken.RetainedId} stands on the sample of {other.Load.Code} already. Take another number.") { Place = Ticket };
                }

                return [sample];
            },
            by, Source, recorded, SeenTicket.Unchanged(Ticket, Seen));
    }
}
