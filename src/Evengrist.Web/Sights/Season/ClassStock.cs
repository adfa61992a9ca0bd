using Evengrist.Season;

namespace Evengrist.Web.Sights.Season;

/// <summary>Stock of one class of wheat over a plan.</summary>
/// <param name="WheatClass">The class.</param>
/// <param name="Tonnes">At the start, then at the end of each period, t.</param>
public sealed record ClassStock(string WheatClass, IReadOnlyList<double> Tonnes)
{
    /// <summary>Every class of a plan, most first.</summary>
    public static IReadOnlyList<ClassStock> Of(SeasonPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var classes = plan.Spec.AllWheats.ToDictionary(w => w.Code, w => w.WheatClass);
        var opening = plan.Spec.Wheats.ToLookup(w => w.WheatClass, w => w.OpeningTonnes);
        var ends = plan.Stocks.ToLookup(s => (Class: classes[s.Wheat], s.Period), s => s.Tonnes);
        return [.. classes.Values.Distinct()
            .Select(c => new ClassStock(c, [opening[c].Sum(), .. Enumerable.Range(0, plan.Spec.Periods.Count).Select(t => ends[(c, t)].Sum())]))
            .OrderByDescending(s => s.Tonnes[0]).ThenBy(s => s.WheatClass, StringComparer.Ordinal)];
    }
}
