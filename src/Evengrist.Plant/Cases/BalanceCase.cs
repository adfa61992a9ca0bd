using Evengrist.Milling.Balance;

namespace Evengrist.Plant.Cases;

/// <summary>A mill's balance posed in JSON.</summary>
/// <param name="Wheat">Wheat to the mill before cleaning.</param>
/// <param name="Products">What came off the rolls.</param>
public sealed record BalanceCase(PosedMass Wheat, IReadOnlyList<PosedWeighedProduct> Products)
{
    /// <summary>Screenings; none when left out.</summary>
    public PosedMass? Screenings { get; init; }

    /// <summary>Water let in; none when left out.</summary>
    public PosedMass? Water { get; init; }

    /// <summary>What the temper bins held more at the end, below 0 where less; nothing when left out.</summary>
    public PosedRise? TemperRise { get; init; }

    /// <summary>Wheat weighed before first break.</summary>
    public PosedMass? FirstBreak { get; init; }

    /// <summary>Moisture of the wheat before water.</summary>
    public PosedMoisture? WheatMoisture { get; init; }

    /// <summary>Moisture at first break.</summary>
    public PosedMoisture? FirstBreakMoisture { get; init; }

    /// <summary>Evaporation known from elsewhere, per cent of the wheat to first break.</summary>
    public PosedMoisture? Evaporation { get; init; }

    /// <summary>Electricity, kWh.</summary>
    public double? KilowattHours { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "wheat": { "tonnes": before cleaning, as it lay, "uncertaintyPercent"?: one standard uncertainty, 0.25 [from memory] when left out },
          "screenings"?, "water"?: the same, 2 % [ours] when left out, "firstBreak"?: weighed before first break, 0.25 %, "temperRise"?: { "tonnes": more at the end, "uncertaintyTonnes"?: 0.5 [ours] },
          "products": [ { "name", "kind": "Flour" | "ByProduct", "tonnes": without additives, "uncertaintyPercent"?: 0.25, 0.5 for by-products [ours], "moisture"?: { "percent": wet basis, "uncertainty"?: points, 0.15 } } ... ],
          "wheatMoisture"?, "firstBreakMoisture"?: { "percent", "uncertainty"? }, "evaporation"?: the same, in per cent of the wheat to first break, "kilowattHours"?
        }
        All over one and the same time.
        """,
        """
        { "wheat": { "tonnes": 600 }, "screenings": { "tonnes": 8.4 }, "water": { "tonnes": 30.99 }, "wheatMoisture": { "percent": 11.6 },
          "products": [ { "name": "flour", "kind": "Flour", "tonnes": 462, "moisture": { "percent": 14.2 } }, { "name": "wheatfeed and bran", "kind": "ByProduct", "tonnes": 150, "moisture": { "percent": 14.5, "uncertainty": 0.5 } },
                        { "name": "germ", "kind": "ByProduct", "tonnes": 1.2, "moisture": { "percent": 13 } } ] }
        """);

    /// <summary>Reads a case; what cannot be balanced is a fault too.</summary>
    public static Parsed<BalanceCase> Read(Stream stream) => SeasonCase.ReadAs<BalanceCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<BalanceCase>(faults) : Parsing.Got(posed));

    private IReadOnlyList<Fault> Faults() => Products.Any(p => p is null) ? [Fault.AtPath("$.products", "null in a list", "a product in its place")] : [.. ToSpec().Faults().Select(f => Fault.Told("$", f))];

    /// <summary>What is to be balanced, with the usual errors where none are given.</summary>
    public BalanceSpec ToSpec()
    {
        var usual = new UsualErrors();
        return new BalanceSpec(Wheat.Of(usual.WheatPercent), [.. Products.Select(p => p.Of(usual))])
        {
            Screenings = Screenings?.Of(usual.ScreeningsPercent) ?? new Weighed(0, 0), Water = Water?.Of(usual.WaterPercent) ?? new Weighed(0, 0), FirstBreak = FirstBreak?.Of(usual.FirstBreakPercent),
            TemperRise = TemperRise is { } rise ? new Weighed(rise.Tonnes, rise.UncertaintyTonnes ?? usual.TemperRiseTonnes) : new Weighed(0, 0),
            WheatMoisture = WheatMoisture?.Of(usual), FirstBreakMoisture = FirstBreakMoisture?.Of(usual), Evaporation = Evaporation?.Of(usual), KilowattHours = KilowattHours,
        };
    }
}

/// <summary>A mass posed.</summary>
/// <param name="Tonnes">As it lay, t.</param>
public sealed record PosedMass(double Tonnes)
{
    /// <summary>One standard uncertainty, per cent of it; the usual one when left out.</summary>
    public double? UncertaintyPercent { get; init; }

    internal Weighed Of(double usualPercent) => Weighed.Of(Tonnes, UncertaintyPercent ?? usualPercent);
}

/// <summary>A rise of the temper bins posed.</summary>
/// <param name="Tonnes">More at the end, t; below 0 where less.</param>
public sealed record PosedRise(double Tonnes)
{
    /// <summary>One standard uncertainty, t; the usual one when left out.</summary>
    public double? UncertaintyTonnes { get; init; }
}

/// <summary>A moisture posed.</summary>
/// <param name="Percent">Per cent, wet basis.</param>
public sealed record PosedMoisture(double Percent)
{
    /// <summary>One standard uncertainty, points; the usual one when left out.</summary>
    public double? Uncertainty { get; init; }

    internal MeanMoisture Of(UsualErrors usual) => new(Percent, Uncertainty ?? usual.MoisturePoints);
}

/// <summary>A product posed.</summary>
/// <param name="Name">What the mill calls it.</param>
/// <param name="Kind">Flour or by-product.</param>
/// <param name="Tonnes">As it lay, t, without additives and rework.</param>
public sealed record PosedWeighedProduct(string Name, WeighedKind Kind, double Tonnes)
{
    /// <summary>One standard uncertainty, per cent of it; the usual one when left out.</summary>
    public double? UncertaintyPercent { get; init; }

    /// <summary>Its moisture; not read when left out.</summary>
    public PosedMoisture? Moisture { get; init; }

    internal WeighedProduct Of(UsualErrors usual) => new(Name, Kind, Weighed.Of(Tonnes, UncertaintyPercent ?? usual.PercentOf(Kind))) { Moisture = Moisture?.Of(usual) };
}
