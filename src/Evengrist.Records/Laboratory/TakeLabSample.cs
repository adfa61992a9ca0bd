using Evengrist.Laboratory.Samples;
using Evengrist.Ledger;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A named person took a sample for the laboratory.</summary>
/// <param name="Place">Code of the place.</param>
/// <param name="At">When.</param>
/// <param name="Sample">Its number and what it is for.</param>
public sealed record TakeLabSample(string Place, Instant At, LabSample Sample)
{
    /// <summary>The source of what is recorded at the bench.</summary>
    public const string Source = "bench";

    /// <summary>Records it. The same sample sent again is not recorded again.</summary>
    /// <exception cref="LedgerRefusal">There is no such place, its number is taken by another sample, or it lies in the future; nothing was recorded.</exception>
    public Receipt In(Mill mill, string by, Instant? recorded = null)
    {
        ArgumentNullException.ThrowIfNull(mill);
        if (Sample.Faults() is { Count: > 0 } faults)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, string.Join(" ", faults)) { Place = Place, At = At };
        }

        return mill.Record(
            view =>
            {
                var place = view.Book.Named(Place);
                if (TakenSample.Find(view.Book, Sample.Code, Instant.MaxValue) is { } other && (other.Place.Id != place.Id || other.At != At))
                {
                    throw new LedgerRefusal(LedgerRule.KeyTaken, $"Number {other.Sample.Code} stands on a sample of {other.Place.Code} of {other.At} already. Take another number.") { Place = Place, At = At };
                }

                return [new Happen($"sample {Sample.Code.ToUpperInvariant()}", place.Code, At, HappeningKind.Sampled, Sample.Text)];
            },
            by, Source, recorded);
    }
}
