namespace Evengrist.Season;

/// <summary>What is wrong with what is asked of a plan.</summary>
public static class SeasonFaults
{
    /// <summary>Every fault: numbers that cannot be, limits that cross, unknown names and properties, demand with no hours to mill it, wheat without end. Empty where there is none.</summary>
    public static IReadOnlyList<SeasonFault> Faults(this SeasonSpec spec)
    {
        ArgumentNullException.ThrowIfNull(spec);
        var faults = new FaultList();
        if (HasHoles(spec))
        {
            faults.Add("lists", "one of them holds nothing (null) where something is needed: fill it in or take it out.");
            return faults.Found;
        }

        Periods(spec, faults);
        if (faults.Found.Count > 0)
        {
            return faults.Found;
        }

        faults.Codes("mill unit", spec.Units.Select(u => u.Code));
        faults.Codes("flour", spec.Flours.Select(f => f.Code));
        faults.Codes("bin", spec.Homes.Select(h => h.Code));
        faults.Codes("wheat", spec.AllWheats.Select(w => w.Code));
        if (string.IsNullOrWhiteSpace(spec.Currency))
        {
            faults.Add("currency", "it is missing; give its code, such as USD.");
        }

        faults.Number("storage", spec.StoragePerTonneWeek, 0);
        foreach (var home in spec.Homes)
        {
            faults.Number($"bin {home.Code}, capacity", home.CapacityTonnes, 0);
        }

        Units(spec, faults);
        WheatFaults.Of(spec, faults);
        OfferFaults.Of(spec, faults);
        FlourFaults.Of(spec, faults);
        ChoiceFaults.Of(spec, faults);
        CarryOut(spec, faults);
        if (spec.Flours.Any(f => f.Demand.Any(d => d > 0)) && spec.Offers.Count == 0 && spec.Wheats.All(w => w.OpeningTonnes == 0 && w.Deliveries.All(d => d.Tonnes == 0)))
        {
            faults.Add("wheats", "every bin is empty, nothing is expected and nothing is on offer, yet flour is wanted: give the stocks.");
        }

        return faults.Found;
    }

    // A text from outside may put null into a list; nothing else can be said of such a spec.
    private static bool HasHoles(SeasonSpec spec)
    {
        static bool Any<T>(IEnumerable<T> list) => list.Any(x => x is null);
        return Any(spec.Periods) || Any(spec.Units) || Any(spec.Wheats) || Any(spec.Flours) || Any(spec.Homes) || Any(spec.Offers) || Any(spec.CarryOut) || Any(spec.Choices)
            || spec.AllWheats.Any(w => Any(w.Layers) || Any(w.Deliveries)) || spec.Offers.Any(o => Any(o.Tiers))
            || spec.Flours.Any(f => Any(f.Limits) || Any(f.Classes) || Any(f.Wheats) || f.Limits.Any(l => Any(l.Relief)));
    }

    private static void Periods(SeasonSpec spec, FaultList faults)
    {
        if (spec.Periods.Count == 0)
        {
            faults.Add("periods", "there is none; a plan needs at least one day or week.");
        }

        for (var t = 0; t < spec.Periods.Count; t++)
        {
            if (spec.Periods[t].Days < 1)
            {
                faults.Add($"period {t}", $"it lasts {spec.Periods[t].Days} days; at least one is needed.");
            }
            else if (t > 0 && spec.Periods[t].Start != spec.Periods[t - 1].End)
            {
                faults.Add($"period {t}", $"it starts on {spec.Periods[t].Start:uuuu-MM-dd}, but the one before it ends before {spec.Periods[t - 1].End:uuuu-MM-dd}; periods follow each other without a gap.");
            }
        }

        if (spec.Units.Count == 0 || spec.Flours.Count == 0)
        {
            faults.Add(spec.Units.Count == 0 ? "mill units" : "flours", "there is none; a plan needs at least one.");
        }
    }

    private static void Units(SeasonSpec spec, FaultList faults)
    {
        foreach (var unit in spec.Units)
        {
            faults.Number($"mill unit {unit.Code}, rate", unit.TonnesPerHour, 0, above: true);
            if (unit.LeastCampaignHours is { } least)
            {
                faults.Number($"mill unit {unit.Code}, least campaign", least, 0);
            }

            if (unit.Hours.Count != spec.Periods.Count)
            {
                faults.Add($"mill unit {unit.Code}, hours", $"there are {unit.Hours.Count} for {spec.Periods.Count} periods; give one for each.");
                continue;
            }

            for (var t = 0; t < unit.Hours.Count; t++)
            {
                faults.Number($"mill unit {unit.Code}, hours, period {t}", unit.Hours[t], 0, 24 * spec.Periods[t].Days);
            }
        }
    }

    private static void CarryOut(SeasonSpec spec, FaultList faults)
    {
        foreach (var left in spec.CarryOut)
        {
            var where = $"carry-out of {(left.WheatClass.Length > 0 ? left.WheatClass : "wheat")}";
            faults.Number(where, left.LeastTonnes, 0);
            if (left.WheatClass.Length > 0 && spec.AllWheats.All(w => w.WheatClass != left.WheatClass))
            {
                faults.Add(where, "no wheat is of this class.");
            }
        }
    }
}
