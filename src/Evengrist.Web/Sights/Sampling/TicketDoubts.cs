using Evengrist.Intake;
using Evengrist.Intake.Grading;
using Evengrist.Intake.Sampling;
using Evengrist.Ledger;
using Evengrist.Web.Sights.Trucks;
using NodaTime;

namespace Evengrist.Web.Sights.Sampling;

/// <summary>The sample of a ticket, and the doubt at the edges near its readings.</summary>
public static class TicketDoubts
{
    /// <summary>The newest sample recorded on a load by a moment, with the happening; null where there is none.</summary>
    public static (Happening Happening, SampleTaken Taken)? SampleOf(Book book, Place truck, Instant at)
    {
        ArgumentNullException.ThrowIfNull(book);
        ArgumentNullException.ThrowIfNull(truck);
        foreach (var happening in book.HappeningsOn(truck.Id).Reverse().Where(h => h.At <= at))
        {
            if (SampleTaken.Of(happening) is { } taken)
            {
                return (happening, taken);
            }
        }

        return null;
    }

    /// <summary>Readings of the ticket against the edges of its contract and of the house's bands.</summary>
    public static IReadOnlyList<ReadingDoubts> Of(TruckSight truck, (Happening Happening, SampleTaken Taken)? sample, SamplingPolicy policy, HouseClass? house)
    {
        ArgumentNullException.ThrowIfNull(truck);
        return LoadEdges.Of([.. truck.Readings.Where(r => r.What is not (Property.GrossWeight or Property.TareWeight)).Select(Finding.Of)], truck.Terms, house, policy, sample?.Taken.Cuts);
    }
}
