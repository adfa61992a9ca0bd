using NodaTime;

namespace Evengrist.Season.Terms;

/// <summary>The crop year after the one that terms were kept for.</summary>
public static class NextYear
{
    /// <summary>The same terms with every date a year later: what is expected where nothing else is known yet.</summary>
    public static SeasonTerms Of(SeasonTerms terms)
    {
        ArgumentNullException.ThrowIfNull(terms);
        return terms with
        {
            End = terms.End.PlusYears(1),
            Units = [.. terms.Units.Select(u => u with { Closed = [.. u.Closed.Select(Later)] })],
            Flours = [.. terms.Flours.Select(f => f with { Peaks = [.. f.Peaks.Select(p => p with { From = Later(p.From), To = Later(p.To) })] })],
            Offers = [.. terms.Offers.Select(o => o with { First = Later(o.First), Last = Later(o.Last) })],
            Arrivals = [.. terms.Arrivals.Select(a => a with { First = Later(a.First), Last = Later(a.Last) })],
        };
    }

    /// <summary>What a plan leaves at its end, as the stocks the next year begins with; each wheat of the mean quality it has.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="least">What is less is left out, t.</param>
    public static IReadOnlyList<SeasonWheat> Stocks(SeasonPlan plan, double least = 1)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var left = plan.Stocks.Where(s => s.Period == plan.Spec.Periods.Count - 1).ToDictionary(s => s.Wheat, s => s.Tonnes);
        return [.. plan.Spec.AllWheats.Where(w => left.GetValueOrDefault(w.Code) >= least)
            .Select(w => w with { Code = w.Home.Length > 0 ? w.Code : $"{w.Code}, old crop", OpeningTonnes = left[w.Code], Layers = [], Deliveries = [] })];
    }

    private static LocalDate Later(LocalDate day) => day.PlusYears(1);
}
