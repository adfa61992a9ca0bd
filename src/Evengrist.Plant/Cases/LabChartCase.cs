using Evengrist.Laboratory.Charts;

namespace Evengrist.Plant.Cases;

/// <summary>Values posed in JSON to be charted.</summary>
public sealed record LabChartCase
{
    /// <summary>Single values in the order of time; empty where groups are given.</summary>
    public IReadOnlyList<double> Values { get; init; } = [];

    /// <summary>Groups of one size; empty where single values are given.</summary>
    public IReadOnlyList<IReadOnlyList<double>> Groups { get; init; } = [];

    /// <summary>From how many of the first the limits are taken; all where left out.</summary>
    public int? Period { get; init; }

    /// <summary>What the spread of groups is found from: GroupRange or GroupDeviation.</summary>
    public SigmaEstimate From { get; init; } = SigmaEstimate.GroupRange;

    /// <summary>The mean that is wanted.</summary>
    public double? Target { get; init; }

    /// <summary>A moving mean; null for none.</summary>
    public PosedMovingMean? MovingMean { get; init; }

    /// <summary>Cumulative sums; null for none.</summary>
    public PosedSums? Sums { get; init; }

    /// <summary>Rules for runs; four where left out.</summary>
    public IReadOnlyList<RunRule>? Rules { get; init; }

    /// <summary>Lower limit of the flour.</summary>
    public double? Lower { get; init; }

    /// <summary>Upper limit of the flour.</summary>
    public double? Upper { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        $$"""
        {
          "values": [ in the order of time, one unit and basis ] or "groups": [ [ of one size ] ... ], "period"?: from how many of the first the limits are taken, all when left out,
          "from"?: "GroupRange" | "GroupDeviation", for groups, "target"?: the mean that is wanted,
          "movingMean"?: { "weight"?: 0.2, "width"?: 3 }, "sums"?: { "allowance"?: 0.5, "limit"?: 5 }, both in standard deviations,
          "rules"?: [ {{string.Join(", ", Enum.GetNames<RunRule>().Skip(1))}} ], the first four when left out, "lower"?, "upper"?: limits of the flour, for capability
        }
        """,
        """
        { "values": [ 49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1 ], "movingMean": {}, "sums": { "limit": 4 }, "upper": 56 }
        """);

    /// <summary>The question it poses.</summary>
    public ChartSpec Spec => new(Groups.Count > 0 ? Groups : [.. Values.Select(v => (IReadOnlyList<double>)[v])])
    {
        Period = Period, From = From, Target = Target, MovingMean = MovingMean is { } mean ? (mean.Weight, mean.Width) : null, Sums = Sums is { } sums ? (sums.Allowance, sums.Limit) : null,
        Rules = Rules ?? RunRules.Four, Lower = Lower, Upper = Upper,
    };

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabChartCase> Read(Stream stream) => SeasonCase.ReadAs<LabChartCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<LabChartCase>(faults) : Parsing.Got(posed));

    private IReadOnlyList<Fault> Faults() => Groups.Any(g => g is null) ? [Fault.AtPath("$.groups", "null in a list", "a list of values")]
        : Values.Count > 0 && Groups.Count > 0 ? [Fault.Told("$", "Give single values or groups, not both.")]
        : [.. Spec.Faults().Select(f => Fault.Told("$", f))];
}

/// <summary>A moving mean.</summary>
public sealed record PosedMovingMean
{
    /// <summary>λ, the weight of the newest.</summary>
    public double Weight { get; init; } = 0.2;

    /// <summary>L, half its width in standard deviations.</summary>
    public double Width { get; init; } = 3;
}

/// <summary>Cumulative sums, in standard deviations.</summary>
public sealed record PosedSums
{
    /// <summary>k.</summary>
    public double Allowance { get; init; } = 0.5;

    /// <summary>h.</summary>
    public double Limit { get; init; } = 5;
}
