using System.Diagnostics;
using Evengrist.Ledger;
using Evengrist.Quantities;
using Evengrist.Tracing;
using Evengrist.Tracing.Bounds;
using Evengrist.Tracing.Drill;
using Evengrist.Tracing.Recall;
using NodaTime;

namespace Evengrist.Records.Tracing;

/// <summary>Recall drills of a mill: papers by number.</summary>
public static class Drills
{
    /// <summary>Every drill as it stands, the newest first.</summary>
    public static IReadOnlyList<KeptDrill> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(KeptDrill.PaperKind).NewestOfEach().Read<KeptDrill>(KeptDrill.TryRead).Select(p => p.Value).OrderByDescending(d => d.StartedAt).ThenByDescending(d => d.Number, StringComparer.Ordinal)];
    }

    /// <summary>What a drill would be about: the code where one is given, else what the seed picks of the year before the moment.</summary>
    /// <returns>The place; null with a reason where there is none.</returns>
    public static (Place? Subject, string? Reason) Subject(Mill mill, string? code, int? seed, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view =>
        {
            if (!string.IsNullOrWhiteSpace(code))
            {
                return view.Book.Find(code) is { Kind: PlaceKind.Truck or PlaceKind.Pallet or PlaceKind.BulkLoad } named ? (named, (string?)null)
                    : ((Place?)null, $"“{code.Trim()}” is no truck, pallet or load of the ledger: a drill is about one of these.");
            }

            return seed is { } number && DrillSubject.Pick(view.Book, number, asOf - Duration.FromDays(365), asOf) is { } picked ? (picked, null)
                : (null, "The ledger has no truck or pallet of the last year to pick from.");
        });
    }

    /// <summary>Starts a drill.</summary>
    /// <exception cref="LedgerRefusal">No name is given, or the subject is none.</exception>
    public static KeptDrill Start(Mill mill, string? code, int? seed, Mass threshold, NetKind net, Instant asOf, string by, Instant at)
    {
        if (string.IsNullOrWhiteSpace(by))
        {
            throw new LedgerRefusal(LedgerRule.Malformed, "A drill carries the name of who starts it.");
        }

        var (subject, reason) = Subject(mill, code, seed, asOf);
        if (subject is null)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, reason!);
        }

        var year = at.InUtc().Year;
        var number = FormattableString.Invariant($"D-{year}-{All(mill).Count(d => d.Number.StartsWith($"D-{year}-", StringComparison.Ordinal)) + 1:000}");
        var drill = new KeptDrill(number, subject.Code, threshold.Grams, net, asOf, by.Trim(), at, string.IsNullOrWhiteSpace(code) ? seed : null);
        mill.Papers(KeptDrill.PaperKind).Keep(number, 1, drill.ToJson(), drill.StartedBy);
        return drill;
    }

    /// <summary>Closes a drill with its score.</summary>
    /// <exception cref="LedgerRefusal">There is none of the number, it has ended, or no name is given.</exception>
    public static KeptDrill Close(Mill mill, string number, string by, Instant at, string note)
    {
        var open = Open(mill, number, by);
        var (score, nothing) = Score(mill, open.Subject, Mass.FromGrams(open.ThresholdGrams), open.Net, open.AsOf);
        return score is null ? throw new LedgerRefusal(LedgerRule.Malformed, $"{nothing} Abort the drill, and start one about something else.")
            : End(mill, open with { EndedBy = by.Trim(), EndedAt = at, Note = note.Trim(), Score = score });
    }

    /// <summary>Aborts a drill.</summary>
    /// <exception cref="LedgerRefusal">There is none of the number, it has ended, or no name or reason is given.</exception>
    public static KeptDrill Abort(Mill mill, string number, string by, Instant at, string reason)
    {
        var open = Open(mill, number, by);
        return string.IsNullOrWhiteSpace(reason) ? throw new LedgerRefusal(LedgerRule.Malformed, "Say why the drill is aborted.")
            : End(mill, open with { EndedBy = by.Trim(), EndedAt = at, Aborted = reason.Trim() });
    }

    /// <summary>Runs list and recount of a subject and scores them; keeps nothing.</summary>
    /// <returns>The score; null with a reason where there is nothing to trace.</returns>
    public static (DrillScore? Score, string? Nothing) Score(Mill mill, string subject, Mass threshold, NetKind net, Instant asOf)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return mill.Ask(view =>
        {
            var tracer = view.Tracer();
            var clock = Stopwatch.StartNew();
            var recall = tracer.Recall(new RecallQuestion([new Suspicion(view.Book.Named(subject))]) { AsOf = asOf, Threshold = threshold }, null, Parallel.Invoke);
            var forward = clock.Elapsed.TotalSeconds;
            if (recall.Nothing is { } nothing)
            {
                return ((DrillScore?)null, (string?)nothing);
            }

            var package = view.Book.Named(subject) is { Kind: not PlaceKind.Truck } named ? named.Code : recall.Packages.MaxBy(p => p.Grams.Expected)?.Place.Code ?? subject;
            clock.Restart();
            _ = tracer.Roots(new TraceQuestion(package) { AsOf = asOf });
            return (tracer.Score(recall, net, clock.Elapsed.TotalSeconds, forward), null);
        });
    }

    private static KeptDrill Open(Mill mill, string number, string by)
    {
        if (string.IsNullOrWhiteSpace(by))
        {
            throw new LedgerRefusal(LedgerRule.Malformed, "A drill carries the name of who ends it.");
        }

        return All(mill).FirstOrDefault(d => d.Number.Equals(number.Trim(), StringComparison.OrdinalIgnoreCase)) switch
        {
            null => throw new LedgerRefusal(LedgerRule.Malformed, $"There is no drill {number}."),
            { IsOpen: false } ended => throw new LedgerRefusal(LedgerRule.Malformed, $"{ended.Number} has ended: {(ended.Aborted is null ? "closed" : "aborted")} by {ended.EndedBy}."),
            var open => open,
        };
    }

    private static KeptDrill End(Mill mill, KeptDrill drill)
    {
        mill.Papers(KeptDrill.PaperKind).Keep(drill.Number, 2, drill.ToJson(), drill.EndedBy!);
        return drill;
    }
}
