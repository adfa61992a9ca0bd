using Evengrist.Laboratory.Rings;

namespace Evengrist.Plant.Cases;

/// <summary>Mills beside each other on one property posed in JSON, with ring results.</summary>
public sealed record LabMillsCase
{
    /// <summary>Each mill as its laboratory reports it.</summary>
    public IReadOnlyList<MillFigures> Mills { get; init; } = [];

    /// <summary>Results of ring tests.</summary>
    public IReadOnlyList<RingResult> Ring { get; init; } = [];

    /// <summary>Lower limit of the flour.</summary>
    public double? Lower { get; init; }

    /// <summary>Upper limit of the flour.</summary>
    public double? Upper { get; init; }

    /// <summary>The laboratory whose bias is 0; the mean of all linked where left out.</summary>
    public string? Reference { get; init; }

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "mills": [ { "mill", "laboratory": who read it, "mean", "deviation", "count" } ... one property, one unit and basis ], "lower"?, "upper"?: limits of the flour, one at least,
          "ring"?: [ { "laboratory", "sample": a flour that several read, "value" } ... ], "reference"?: the laboratory whose bias is 0, the mean of all that samples link when left out
        }
        """,
        """
        { "lower": 11.7, "upper": 12.1, "reference": "brand",
          "mills": [ { "mill": "M03", "laboratory": "L3", "mean": 11.95, "deviation": 0.09, "count": 60 }, { "mill": "M07", "laboratory": "L7", "mean": 11.78, "deviation": 0.07, "count": 60 } ],
          "ring": [ { "laboratory": "brand", "sample": "f1", "value": 11.90 }, { "laboratory": "L7", "sample": "f1", "value": 11.79 }, { "laboratory": "brand", "sample": "f2", "value": 12.05 }, { "laboratory": "L7", "sample": "f2", "value": 11.93 },
                    { "laboratory": "L3", "sample": "f2", "value": 12.06 }, { "laboratory": "brand", "sample": "f3", "value": 12.10 }, { "laboratory": "L3", "sample": "f3", "value": 12.09 } ] }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<LabMillsCase> Read(Stream stream) => SeasonCase.ReadAs<LabMillsCase>(stream).Then(posed =>
        posed.Mills.Any(m => m is null) ? Parsing.Failed<LabMillsCase>([Fault.AtPath("$.mills", "null in a list", "a mill")])
        : posed.Ring.Any(r => r is null) ? Parsing.Failed<LabMillsCase>([Fault.AtPath("$.ring", "null in a list", "a result")])
        : MillsModel.Faults(posed.Mills, posed.Ring, posed.Lower, posed.Upper, posed.Reference) is { Count: > 0 } faults ? Parsing.Failed<LabMillsCase>([.. faults.Select(f => Fault.Told("$", f))])
        : Parsing.Got(posed));
}
