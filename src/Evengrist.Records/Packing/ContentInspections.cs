using System.Globalization;
using Evengrist.Ledger;
using Evengrist.Packing.NetContent;
using NodaTime;

namespace Evengrist.Records.Packing;

/// <summary>Inspections of net content that were signed: papers by number, never changed.</summary>
public static class ContentInspections
{
    /// <summary>All of them, the newest first.</summary>
    public static IReadOnlyList<(string Number, ContentInspection Inspection, Instant Kept)> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(ContentInspection.Kind).All().Read<ContentInspection>(ContentInspection.TryRead).Select(p => (p.Paper.Code, p.Value, p.Paper.Recorded)).Reverse()];
    }

    /// <summary>One; null where none of the number is kept.</summary>
    public static (string Number, ContentInspection Inspection, Instant Kept)? Find(Mill mill, string number)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(number);
        return mill.Papers(ContentInspection.Kind).Newest(number.Trim().ToUpperInvariant()) is { } paper && ContentInspection.TryRead(paper.Json, out var inspection, out _) ? (paper.Code, inspection, paper.Recorded) : null;
    }

    /// <summary>Keeps an inspection under the next number; every fault where it cannot be, and then nothing is kept. The same once more is the same.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="inspection">What was found.</param>
    /// <param name="reason">Why what is odd stands; empty where nothing is.</param>
    /// <param name="now">The present moment.</param>
    public static (string? Number, IReadOnlyList<string> Faults, IReadOnlyList<string> Questions) Keep(Mill mill, ContentInspection inspection, string reason, Instant now)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(inspection);
        ArgumentNullException.ThrowIfNull(reason);
        string[] faults = [.. inspection.Faults(), .. inspection.SampledAt > now ? ["It was sampled in the future."] : Array.Empty<string>()];
        var questions = faults.Length > 0 ? [] : inspection.Questions();
        if (faults.Length > 0 || (questions.Count > 0 && reason.Trim().Length == 0))
        {
            return (null, faults, questions);
        }

        var kept = questions.Count > 0 ? inspection with { Remark = $"{inspection.Remark} Asked: {string.Join(" ", questions)} Answered: {reason.Trim()}".Trim() } : inspection;
        var (shelf, json, year) = (mill.Papers(ContentInspection.Kind), kept.ToJson(), now.InZone(mill.Settings.Zone).Year);
        if (shelf.All().FirstOrDefault(p => p.Json == json) is { } same)
        {
            return (same.Code, [], []);
        }

        for (var serial = 1 + shelf.NewestOfEach().Count(p => p.Code.StartsWith(Number(year, 0)[..^4], StringComparison.Ordinal)); ; serial++)
        {
            try
            {
                shelf.Keep(Number(year, serial), 1, json, kept.SignedBy);
                return (Number(year, serial), [], []);
            }
            catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
            {
                // Another inspection has this number: the next one.
            }
        }
    }

    private static string Number(int year, int serial) => string.Create(CultureInfo.InvariantCulture, $"NC-{year}-{serial:0000}");
}
