using Evengrist.Ledger;

namespace Evengrist.Season.Lots;

/// <summary>What is wrong with a lot whose worth is asked.</summary>
public static class LotFaults
{
    /// <summary>Every fault; none where its worth can be reckoned. Faults of the year itself are not among them.</summary>
    public static IReadOnlyList<SeasonFault> Of(LotSpec lot, SeasonSpec season)
    {
        ArgumentNullException.ThrowIfNull(lot);
        ArgumentNullException.ThrowIfNull(season);
        var faults = new FaultList();
        faults.Number("tonnes", lot.Tonnes, 0, 10_000_000, above: true);
        faults.Number("moisture", lot.Wheat.MoisturePercent, 0, 60);
        WheatFaults.Period(season, "when it would be there", lot.Period, faults);
        if (lot.AskedPerTonne is { } asked)
        {
            faults.Number("asked price", asked, 0);
        }

        faults.Quality("the lot", lot.Wheat.Quality);
        string[] classes = [.. season.AllWheats.Select(w => w.WheatClass).Concat(season.Flours.SelectMany(f => f.Classes)).Where(c => c.Length > 0).Distinct().Order(StringComparer.Ordinal)];
        if (!classes.Contains(lot.Wheat.WheatClass))
        {
            faults.Add("class", $"the year knows no wheat of class {(lot.Wheat.WheatClass.Length > 0 ? lot.Wheat.WheatClass : "(none given)")}; it knows {string.Join(", ", classes)}.");
            return faults.Found;
        }

        foreach (var what in season.Flours.Where(f => SeasonYield.Allows(f, lot.Wheat)).SelectMany(f => f.Limits).Select(l => l.What).Distinct().Where(p => !lot.Wheat.Quality.TryGet(p, out _)).Order())
        {
            faults.Add(what.Words(), $"a flour the lot may go into limits it, and it is not known of the lot: give it.");
        }

        return faults.Found;
    }
}
