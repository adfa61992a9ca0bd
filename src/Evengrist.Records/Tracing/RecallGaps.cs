using Evengrist.Ledger;
using Evengrist.Records.Packing;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Records.Tracing;

/// <summary>What a recall does not know that stands in papers and not in the ledger: packing lines cleaned down on its way, where what was flushed out was moved nowhere.</summary>
public static class RecallGaps
{
    // Flushing is booked at the end of a shift as well; choices of ours.
    private static readonly Duration Booked = Duration.FromHours(12), After = Duration.FromDays(1);

    /// <summary>The recall with those as well.</summary>
    public static RecallOutcome With(Mill mill, RecallOutcome recall)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(recall);
        var lines = recall.Stays.Where(p => p.Place.Kind == PlaceKind.PackingLine).ToArray();
        if (lines.Length == 0)
        {
            return recall;
        }

        var cleaned = CleanDowns.All(mill);
        var unbooked = mill.Ask(view => lines.SelectMany(p => cleaned
            .Where(c => c.Clean.Line.Equals(p.Place.Code, StringComparison.OrdinalIgnoreCase) && c.Clean.At >= p.From && c.Clean.At <= Instant.Min(p.Until + After, recall.AsOf))
            .Select(c => (Begun: c.Clean.At - Duration.FromMinutes(c.Clean.Minutes), c.Clean.At))
            .Where(c => !view.Book.MovementsOf(p.Place.Id).Select(i => view.Book.Movements[i])
                .Any(m => m.From == p.Place.Id && m.Mass.Grams > 0 && view.Book[m.To].Kind is PlaceKind.Waste or PlaceKind.ReworkTote && m.Until >= c.Begun && m.At <= c.At + Booked))
            .Select(c => new StillUnknown(UnknownKind.Flushed, p.Place, null, []) { From = c.Begun, Until = c.At })).ToArray());
        return unbooked.Length == 0 ? recall : recall with { Unknown = [.. recall.Unknown, .. unbooked] };
    }
}
