using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Milling.Stock;

namespace Evengrist.Milling.OnPaper;

/// <summary>A mill forecast as it is set and, where something is tried, what that would change; or why there is no answer.</summary>
/// <param name="Now">As it is set; null where there is no answer.</param>
/// <param name="Change">What is tried would change; null where nothing is tried or there is no answer.</param>
/// <param name="Unsolved">Why there is no answer, each a sentence that says what to do; empty where there is one.</param>
public sealed record MillTrial(MillForecast? Now, MillChange? Change, IReadOnlyList<string> Unsolved)
{
    /// <summary>What is tried would change of the rolls' work; null where nothing is tried or there is no answer.</summary>
    public WorkChange? Work { get; init; }

    /// <summary>Reckons a trial.</summary>
    /// <param name="sheet">The flow sheet as it is set.</param>
    /// <param name="tried">The settings tried; null for none.</param>
    /// <param name="wheat">The wheat.</param>
    /// <param name="otherWheat">The wheat tried; null for the same.</param>
    /// <param name="tuning">What is known of the mill.</param>
    /// <param name="sets">Products to take together.</param>
    /// <param name="pricePerTonne">Price of each product by its code; null for no money.</param>
    /// <exception cref="ArgumentException">A sheet or wheat has faults, or the tuning is of another flow sheet.</exception>
    public static MillTrial Of(
        FlowSheet sheet, SheetChange? tried, MillWheat wheat, MillWheat? otherWheat, MillTuning tuning, IReadOnlyList<ProductSet>? sets = null, IReadOnlyDictionary<string, decimal>? pricePerTonne = null)
    {
        ArgumentNullException.ThrowIfNull(sheet);
        var change = tried is null && otherWheat is null ? null : MillChange.Of(sheet, tried?.Apply(sheet) ?? sheet, wheat, otherWheat, tuning, sets, pricePerTonne);
        var now = change?.Now ?? MillForecast.Of(sheet, wheat, tuning, sets);
        string[] unsolved = [.. new[] { now, change?.Then }.Select(f => f?.Solution.Report.Unsolved).OfType<string>()];
        return unsolved.Length > 0 ? new MillTrial(null, null, unsolved)
            : new MillTrial(now, change, []) { Work = change is null ? null : WorkChange.Of(sheet, tried?.Apply(sheet) ?? sheet, wheat, otherWheat ?? wheat, tuning) };
    }
}
