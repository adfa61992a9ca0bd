using Evengrist.Ledger;
using Evengrist.Season;

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

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "season": as in season plan,
          "wheat": { "code", "wheatClass", "openingTonnes": of a truck, or 0, "moisturePercent", "quality": { "Protein": { "value", "basis" } ... } },
          "period"?: 0, "along"?: "Protein", "values"?: [ 12, 12.5, 13 ... ]
        }
        """,
        SeasonCase.Help.Example.TrimEnd()[..^1].TrimEnd() + """
        ,
          "wheat": { "code": "truck", "wheatClass": "HS", "openingTonnes": 26, "moisturePercent": 12, "quality": { "Protein": { "value": 14.2, "basis": "12mb" } } },
          "values": [ 12, 13, 14, 15 ] }
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
        faults.AddRange((c.Season with { Offers = [.. c.Season.Offers, asOffer] }).Faults().Select(f => Fault.AtPath($"$.wheat, {f.Where}", "what cannot be meant", f.What)));
        if (c.Values.Count > 0 && !c.Wheat.Quality.TryGet(c.Along, out _))
        {
            faults.Add(Fault.AtPath("$.along", $"{c.Along}", "a property that is given of the wheat"));
        }

        if (c.Values.Any(v => !double.IsFinite(v)) || c.Wheat.OpeningTonnes < 0)
        {
            faults.Add(Fault.AtPath("$.values", "a number that is none", "numbers, and tonnes of 0 or more"));
        }

        return faults.Count > 0 ? Parsing.Failed<SeasonValueCase>(faults) : Parsing.Got(c);
    });
}
