using Evengrist.Ledger;
using Evengrist.Season;
using Evengrist.Season.Lots;

namespace Evengrist.Plant.Cases;

/// <summary>A crop year posed in JSON with a wheat whose worth is asked.</summary>
/// <param name="Season">What the plan is made from.</param>
/// <param name="Wheat">The wheat: a tonne of it kept apart and, with its opening tonnes as a truck, laid into each bin.</param>
public sealed record SeasonValueCase(SeasonSpec Season, SeasonWheat Wheat)
{
    /// <summary>Number of the period, from 0, in which it would be there.</summary>
    public int Period { get; init; }

    /// <summary>The property along which a curve is drawn.</summary>
    public Property Along { get; init; } = Property.Protein;

    /// <summary>The values of the curve, on the basis of the wheat's own; empty for no curve.</summary>
    public IReadOnlyList<double> Values { get; init; } = [];

    /// <summary>Tonnes of an offered lot of the wheat, t; 0 where no lot is asked about.</summary>
    public double LotTonnes { get; init; }

    /// <summary>What is asked for a t of the lot; null where no price was named.</summary>
    public double? AskedPerTonne { get; init; }

    /// <summary>The lot; null where none is asked about.</summary>
    public LotSpec? Lot => LotTonnes == 0 ? null : new LotSpec(Wheat, LotTonnes, Period) { AskedPerTonne = AskedPerTonne };

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "season": as in season plan,
          "wheat": { "code", "wheatClass", "openingTonnes": of a truck, or 0, "moisturePercent", "quality": { "Protein": { "value", "basis" } ... } },
          "period"?: 0, "along"?: "Protein", "values"?: [ 12, 12.5, 13 ... ],
          "lotTonnes"?: of an offered lot, "askedPerTonne"?: money per t   for the worth of a whole lot, part by part
        }
        """,
        SeasonCase.Help.Example.TrimEnd()[..^1].TrimEnd() + """
        ,
          "wheat": { "code": "truck", "wheatClass": "HS", "openingTonnes": 26, "moisturePercent": 12, "quality": { "Protein": { "value": 14.2, "basis": "12mb" } } },
          "values": [ 12, 13, 14, 15 ], "lotTonnes": 40, "askedPerTonne": 300 }
        """);

    /// <summary>Reads a case; what is wrong with the season is a fault too.</summary>
    public static Parsed<SeasonValueCase> Read(Stream stream) => SeasonCase.ReadAs<SeasonValueCase>(stream).Then(c => SeasonCase.Sound(c, c.Season)).Then(c =>
    {
        var faults = new List<Fault>();
        if (c.Period < 0 || c.Period >= c.Season.Periods.Count)
        {
            faults.Add(Fault.AtPath("$.period", $"{c.Period}", $"a period from 0 to {c.Season.Periods.Count - 1}"));
        }

        var asOffer = new SeasonOffer(c.Wheat with { OpeningTonnes = 0, Code = "asked" }, [new(1, 0)], 0, 0, 1);
        faults.AddRange((c.Season with { Offers = [.. c.Season.Offers, asOffer] }).Faults().Select(f => Fault.Told($"$.wheat, {f.Where}", f.What)));
        if (c.Values.Count > 0 && !c.Wheat.Quality.TryGet(c.Along, out _))
        {
            faults.Add(Fault.AtPath("$.along", $"{c.Along}", "a property that is given of the wheat"));
        }

        if (c.Values.Any(v => !double.IsFinite(v)) || c.Wheat.OpeningTonnes < 0)
        {
            faults.Add(Fault.AtPath("$.values", "a number that is none", "numbers, and tonnes of 0 or more"));
        }

        if (c.AskedPerTonne is not null && c.Lot is null)
        {
            faults.Add(Fault.AtPath("$.askedPerTonne", $"{c.AskedPerTonne}", "lotTonnes beside it: a price is asked for a lot"));
        }

        if (faults.Count == 0 && c.Lot is { } lot)
        {
            faults.AddRange(LotFaults.Of(lot, c.Season).Select(f => Fault.Told($"$.wheat as a lot, {f.Where}", f.What)));
        }

        return faults.Count > 0 ? Parsing.Failed<SeasonValueCase>(faults) : Parsing.Got(c);
    });
}
