using Evengrist.Ledger;

namespace Evengrist.Season;

/// <summary>What is wrong with flours.</summary>
internal static class FlourFaults
{
    public static void Of(SeasonSpec spec, FaultList faults)
    {
        foreach (var flour in spec.Flours)
        {
            var where = $"flour {flour.Code}";
            Numbers(flour, where, faults);
            Demand(spec, flour, where, faults);
            Wheats(spec, flour, where, faults);
            foreach (var group in flour.Limits.GroupBy(l => l.What))
            {
                if (group.Count() > 1)
                {
                    faults.Add($"{where}, {FaultList.NameOf(group.Key)}", "it is limited twice; give one limit with its least and most.");
                }

                Limit(spec, flour, group.First(), $"{where}, {FaultList.NameOf(group.Key)}", faults);
            }
        }
    }

    private static void Numbers(SeasonFlour flour, string where, FaultList faults)
    {
        faults.Number($"{where}, yield", flour.Yield, 0, 1, above: true);
        faults.Number($"{where}, price of unmet demand", flour.UnmetPricePerTonne, 0, above: true);
        faults.Number($"{where}, by-product", flour.ByProductPerTonne, 0);
        faults.Number($"{where}, least share", flour.LeastShare, 0, 1);
        if (flour.MostGates is < 1)
        {
            faults.Add($"{where}, most gates", $"it is {flour.MostGates}; at least one is needed.");
        }

        if (faults.Number($"{where}, most in store", flour.StockMost, 0) & faults.Number($"{where}, least in store", flour.StockLeast, 0) & faults.Number($"{where}, opening", flour.OpeningTonnes, 0))
        {
            if (flour.StockLeast > flour.StockMost)
            {
                faults.Add($"{where}, least in store", $"it is {FaultList.Shown(flour.StockLeast)} t, above the most, {FaultList.Shown(flour.StockMost)} t.");
            }

            if (flour.OpeningTonnes > 0 && flour.OpeningTonnes - flour.StockMost > (flour.Demand.Count > 0 ? flour.Demand[0] : 0))
            {
                faults.Add($"{where}, opening", $"it is {FaultList.Shown(flour.OpeningTonnes)} t; that is more than can lie there and be sold in the first period.");
            }
        }
    }

    private static void Demand(SeasonSpec spec, SeasonFlour flour, string where, FaultList faults)
    {
        var unit = spec.Units.FirstOrDefault(u => u.Code == flour.Unit);
        if (unit is null)
        {
            faults.Add(where, $"its mill unit {flour.Unit} is not among the mill units.");
        }

        if (flour.Demand.Count != spec.Periods.Count)
        {
            faults.Add($"{where}, demand", $"there are {flour.Demand.Count} numbers for {spec.Periods.Count} periods; give one for each.");
            return;
        }

        for (var t = 0; t < flour.Demand.Count; t++)
        {
            var at = $"{where}, demand, period {t}";
            if (faults.Number(at, flour.Demand[t], 0) && unit?.Hours.Count == spec.Periods.Count && unit.Hours[t] == 0 && flour.StockMost == 0 && flour.Demand[t] > (t == 0 ? flour.OpeningTonnes : 0))
            {
                faults.Add(at, $"{FaultList.Shown(flour.Demand[t])} t are wanted, but {flour.Unit} has no hours then and no flour can be held in store: give hours, move the demand, or let flour be stored.");
            }
        }
    }

    private static void Wheats(SeasonSpec spec, SeasonFlour flour, string where, FaultList faults)
    {
        foreach (var code in flour.Wheats.Where(c => spec.AllWheats.All(w => w.Code != c)))
        {
            faults.Add(where, $"wheat {code} is allowed into it, but there is no such wheat.");
        }

        var allowed = spec.AllWheats.Where(w => SeasonYield.Allows(flour, w)).ToArray();
        if (allowed.Length == 0 && flour.Demand.Any(d => d > 0))
        {
            faults.Add(where, "no wheat may go into it.");
        }

        foreach (var wheat in allowed.Where(w => SeasonYield.Of(w, flour) is not (> 0 and <= 1)))
        {
            faults.Add(where, $"{wheat.Code} would give {FaultList.Shown(SeasonYield.Of(wheat, flour))} t of it for a t of wheat; a number above 0 and at most 1 is needed.");
        }
    }

    private static void Limit(SeasonSpec spec, SeasonFlour flour, SeasonLimit limit, string where, FaultList faults)
    {
        if (!faults.Known(where, limit.What))
        {
            return;
        }

        faults.Basis(where, limit.What, limit.Basis);
        faults.Number($"{where}, price of a miss", limit.MissPrice, 0, above: true);
        var from = FaultList.LeastOf(limit.What);
        if (limit.Least is null && limit.Most is null)
        {
            faults.Add(where, "neither a least nor a most is given.");
        }

        var good = (limit.Least is not { } least || faults.Number($"{where}, least", least, from)) & (limit.Most is not { } most || faults.Number($"{where}, most", most, from));
        if (good && limit.Least > limit.Most)
        {
            faults.Add(where, $"its least, {FaultList.Shown(limit.Least!.Value)}, lies above its most, {FaultList.Shown(limit.Most!.Value)}.");
        }

        for (var r = 0; r < limit.Relief.Count; r++)
        {
            good &= faults.Number($"{where}, relief {r}", limit.Relief[r].By, 0, above: true);
            faults.Number($"{where}, relief {r}, cost", limit.Relief[r].CostPerTonne, 0);
        }

        if (good && limit.Least - limit.Relief.Sum(r => r.By) < from)
        {
            faults.Add(where, $"its relief goes below {FaultList.Shown(from)}.");
        }

        foreach (var wheat in spec.AllWheats.Where(w => SeasonYield.Allows(flour, w) && !w.Quality.TryGet(limit.What, out _)))
        {
            faults.Add(where, $"wheat {wheat.Code} may go into it and its {limit.What.Words()} is not known: give it, or leave the wheat out of the flour.");
        }
    }
}
