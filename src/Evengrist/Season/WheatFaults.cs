namespace Evengrist.Season;

/// <summary>What is wrong with wheats that lie in store or are to come.</summary>
internal static class WheatFaults
{
    public static void Of(SeasonSpec spec, FaultList faults)
    {
        foreach (var wheat in spec.AllWheats)
        {
            One(spec, wheat, $"wheat {wheat.Code}", faults);
        }
    }

    private static void One(SeasonSpec spec, SeasonWheat wheat, string where, FaultList faults)
    {
        faults.Number($"{where}, opening", wheat.OpeningTonnes, 0);
        Moisture($"{where}, moisture", wheat.MoisturePercent, faults);
        faults.Quality(where, wheat.Quality);
        faults.Number($"{where}, end value", wheat.EndValuePerTonne, double.MinValue);
        faults.Number($"{where}, extraction points", wheat.ExtractionPoints, -100, 100);
        if (wheat.Home.Length > 0 && spec.Homes.All(h => h.Code != wheat.Home))
        {
            faults.Add(where, $"its bin {wheat.Home} is not among the bins.");
        }

        foreach (var (flour, yield) in wheat.YieldOf)
        {
            faults.Number($"{where}, yield of {flour}", yield, 0, 1, above: true);
            if (spec.Flours.All(f => f.Code != flour))
            {
                faults.Add($"{where}, yield of {flour}", "there is no such flour.");
            }
        }

        for (var l = 0; l < wheat.Layers.Count; l++)
        {
            faults.Number($"{where}, layer {l}", wheat.Layers[l].Tonnes, 0, above: true);
            Moisture($"{where}, layer {l}, moisture", wheat.Layers[l].MoisturePercent, faults);
            faults.Quality($"{where}, layer {l}", wheat.Layers[l].Quality);
        }

        if (wheat.Layers.Count > 0 && Math.Abs(wheat.Layers.Sum(l => l.Tonnes) - wheat.OpeningTonnes) > 0.01)
        {
            faults.Add($"{where}, layers", $"they sum to {FaultList.Shown(wheat.Layers.Sum(l => l.Tonnes))} t, the opening is {FaultList.Shown(wheat.OpeningTonnes)} t.");
        }

        for (var d = 0; d < wheat.Deliveries.Count; d++)
        {
            var (delivery, at) = (wheat.Deliveries[d], $"{where}, delivery {d}");
            faults.Number($"{at}, tonnes", delivery.Tonnes, 0);
            faults.Number($"{at}, spread of tonnes", delivery.TonnesSpread, 0);
            Period(spec, at, delivery.Period, faults);
            if (delivery.MoisturePercent is { } moisture)
            {
                Moisture($"{at}, moisture", moisture, faults);
            }

            if (delivery.Quality is { } quality)
            {
                faults.Quality(at, quality);
            }
        }
    }

    public static bool Period(SeasonSpec spec, string where, int period, FaultList faults)
    {
        var good = period >= 0 && period < spec.Periods.Count;
        if (!good)
        {
            faults.Add(where, $"period {period} is not among the {spec.Periods.Count} periods, numbered from 0.");
        }

        return good;
    }

    private static void Moisture(string where, double percent, FaultList faults) => faults.Number(where, percent, 0, 60);
}
