using Evengrist.Records.Mix;
using Evengrist.Web.Visiting;

namespace Evengrist.Web.Sights.Mix;

/// <summary>What the mill would do without a program: set the gates as on the last sheet of the flour.</summary>
/// <param name="Sheet">The sheet.</param>
/// <param name="Shares">Its shares, 0 to 1, by bin; they sum to 1.</param>
public sealed record MixHabit(KeptSheet Sheet, IReadOnlyDictionary<string, double> Shares)
{
    /// <summary>The last sheet of a flour that had begun at the moment looked at; null where there is none.</summary>
    public static MixHabit? Of(Visit visit, string flour)
    {
        ArgumentNullException.ThrowIfNull(visit);
        var last = MixSheets.Newest(visit.Mill).FirstOrDefault(k => k.Sheet.Stands && k.Sheet.From <= visit.AsOf && k.Sheet.Flour.Equals(flour, StringComparison.OrdinalIgnoreCase));
        var sum = last?.Sheet.Gates.Sum(g => g.SharePercent) ?? 0;
        return last is null ? null : new MixHabit(last, last.Sheet.Gates.ToDictionary(g => g.Bin, g => g.SharePercent / sum, StringComparer.Ordinal));
    }
}
