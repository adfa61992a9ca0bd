namespace Evengrist.Milling.Balance;

/// <summary>What was weighed and read of a mill over one and the same span: a day, a month.</summary>
/// <param name="Dirty">Wheat to the mill as it left the bins, before cleaning.</param>
/// <param name="Products">What came off the rolls.</param>
public sealed record BalanceSpec(Weighed Dirty, IReadOnlyList<WeighedProduct> Products)
{
    /// <summary>Most products of one balance [design].</summary>
    public const int Most = 100;

    /// <summary>Screenings taken out.</summary>
    public Weighed Screenings { get; init; } = new(0, 0);

    /// <summary>Water let in.</summary>
    public Weighed Water { get; init; } = new(0, 0);

    /// <summary>What the temper bins held more at the end than at the beginning, t; below 0 where they held less.</summary>
    public Weighed TemperRise { get; init; } = new(0, 0);

    /// <summary>Wheat weighed before first break; null where it is not.</summary>
    public Weighed? FirstBreak { get; init; }

    /// <summary>Moisture of the wheat before water; null where it was not read.</summary>
    public MeanMoisture? WheatMoisture { get; init; }

    /// <summary>Moisture at first break; null where it was not read.</summary>
    public MeanMoisture? FirstBreakMoisture { get; init; }

    /// <summary>Evaporation the mill knows of from elsewhere, per cent of the wheat to first break; null where it is left open.</summary>
    public MeanMoisture? Evaporation { get; init; }

    /// <summary>Electricity over the span, kWh; null where it was not read.</summary>
    public double? KilowattHours { get; init; }

    /// <summary>Clean wheat before water, t.</summary>
    public double CleanTonnes => Dirty.Tonnes - Screenings.Tonnes;

    /// <summary>Wheat to first break by balance, t.</summary>
    public double FirstBreakTonnes => CleanTonnes + Water.Tonnes - TemperRise.Tonnes;

    /// <summary>What went in and did not come out weighed, t.</summary>
    public double UnexplainedTonnes => FirstBreakTonnes - Products.Sum(p => p.Mass.Tonnes);

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults()
    {
        if (Dirty.Tonnes == 0)
        {
            return ["No wheat went to the mill: there is nothing to balance. Choose another span."];
        }

        if (Products.Count is 0 or > Most)
        {
            return [$"There are {Products.Count} products: give 1 to {Most}."];
        }

        (string What, Weighed? Mass)[] masses = [("Wheat", Dirty), ("Screenings", Screenings), ("Water", Water), ("Wheat before first break", FirstBreak), .. Products.Select(p => (p.Name, (Weighed?)p.Mass))];
        (string What, MeanMoisture? Read)[] moistures =
            [("Moisture of the wheat", WheatMoisture), ("Moisture at first break", FirstBreakMoisture), ("Evaporation", Evaporation), .. Products.Select(p => ($"Moisture of {p.Name}", p.Moisture))];
        string[] each =
        [
            .. masses.Where(m => m.Mass is { } w && !(w.Tonnes is >= 0 and <= 1e7)).Select(m => $"{m.What}: it lies from 0 to 10,000,000 t."),
            .. masses.Append(("Rise of the temper bins", TemperRise)).Where(m => m.Item2 is { } w && !(w.StandardUncertainty >= 0 && double.IsFinite(w.StandardUncertainty))).Select(m => $"{m.Item1}: its uncertainty is 0 or more."),
            .. moistures.Where(m => m.Read is { } r && !(r.Percent is >= 0 and < 100 && r.StandardUncertainty is >= 0 and < 50)).Select(m => $"{m.What}: it lies from 0 up to 100 %, its uncertainty from 0 to 50 points."),
            .. Products.Where(p => string.IsNullOrWhiteSpace(p.Name)).Select(_ => "A product has no name: give it the mill's own."),
            .. Products.Where(p => p.Kind is not (WeighedKind.Flour or WeighedKind.ByProduct)).Select(p => $"{p.Name}: say whether it is flour or a by-product."),
            .. Products.GroupBy(p => p.Name, StringComparer.Ordinal).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: give each product once."),
            .. double.IsFinite(TemperRise.Tonnes) ? Array.Empty<string>() : ["Rise of the temper bins: a finite number is needed."],
            .. KilowattHours is null or (>= 0 and <= 1e9) ? Array.Empty<string>() : ["Electricity: it lies from 0 to 1,000,000,000 kWh."],
        ];
        return each.Length > 0 ? each
            : !(CleanTonnes > 0) ? ["There are as many screenings as wheat: look for a weight over another time."]
            : !(FirstBreakTonnes > 0) ? ["Nothing reached first break: the temper bins took in more than there was. Choose a longer span."]
            : !(Products.Sum(p => p.Mass.Tonnes) > 0) ? ["No product was weighed: there is nothing to balance. Choose another span."] : [];
    }
}
