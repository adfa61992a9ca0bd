using Evengrist.Season;
using Evengrist.Season.Futures;

namespace Evengrist.Plant.Cases;

/// <summary>A crop year posed in JSON with spreads, of which a promise is asked.</summary>
/// <param name="Season">What the plan is made from.</param>
public sealed record SeasonPromiseCase(SeasonSpec Season) : FutureSpreads
{
    /// <summary>Most futures that are reckoned for one case: they hold both cores meanwhile [design].</summary>
    public const int MostFutures = 100_000;

    /// <summary>How many futures are drawn.</summary>
    public int Futures { get; init; } = 1000;

    /// <summary>The same seed gives the same futures.</summary>
    public long Seed { get; init; } = 1;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "season": as in season plan; spreads of quality there are those of what lies in store and of a lot that comes or is bought,
          "futures"?: 1000, "seed"?: 1, "stated"?: 0.85, "madeTolerance"?: 0.005,
          "districts"?:   [ { "district": as deliveries name it, "tonnesShare", "quality"?: [ { "what", "spread" } ] } ... ],
          "trucks"?:      [ { "wheat": code of a wheat to come, "truckTonnes", "quality"?: [ { "what", "spread" } ] } ... ],
          "demands"?:     [ { "flour", "yearShare", "periodShare", "hold"?: 0 to below 1 } ... ],
          "instruments"?: [ { "what", "shared", "own", "drift"? } ... ],
          "tolerances"?:  [ { "what", "by" } ... ]
        }
        Spreads are standard deviations: shares of tonnes and of demand, units of the property else. A property needs a limit of some flour.
        """,
        SeasonCase.Help.Example.TrimEnd()[..^1].TrimEnd() + """
        ,
          "demands": [ { "flour": "WB", "yearShare": 0.02, "periodShare": 0.05 } ], "instruments": [ { "what": "Protein", "shared": 0.06, "own": 0.05 } ],
          "tolerances": [ { "what": "Protein", "by": 0.2 } ] }
        """);

    /// <summary>Reads a case; what is wrong with the season or the spreads is a fault too.</summary>
    public static Parsed<SeasonPromiseCase> Read(Stream stream) => SeasonCase.ReadAs<SeasonPromiseCase>(stream).Then(Sound);

    /// <summary>The case with another number of futures or seed; a fault where it cannot be.</summary>
    /// <param name="futures">How many futures; null for those of the case.</param>
    /// <param name="seed">The seed; null for that of the case.</param>
    public Parsed<SeasonPromiseCase> With(int? futures, long? seed) => Sound(this with { Futures = futures ?? Futures, Seed = seed ?? Seed });

    /// <summary>What is asked of the season's plan.</summary>
    public FuturesSpec Of(SeasonPlan plan) => new(plan, Futures, Seed)
    {
        Districts = Districts, Trucks = Trucks, Demands = Demands, Instruments = Instruments, Tolerances = Tolerances, MadeTolerance = MadeTolerance, Stated = Stated,
    };

    private static Parsed<SeasonPromiseCase> Sound(SeasonPromiseCase posed) => SeasonCase.Sound(posed, posed.Season).Then(c => c.Futures > MostFutures
        ? Parsing.Failed<SeasonPromiseCase>(Fault.AtPath("$.futures", $"{c.Futures}", $"at most {MostFutures} futures"))
        : FuturesFaults.Of(c, c.Season, c.Futures) is { Count: > 0 } faults
            ? Parsing.Failed<SeasonPromiseCase>([.. faults.Select(f => Fault.Told($"$, {f.Where}", f.What))])
            : Parsing.Got(c));
}
