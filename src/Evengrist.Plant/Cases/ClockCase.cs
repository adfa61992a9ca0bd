using Evengrist.Milling.Clock;

namespace Evengrist.Plant.Cases;

/// <summary>A way of the wheat posed in JSON, to be timed, and readings about a change to tune one from.</summary>
public sealed record ClockCase
{
    private const int MostReadings = 5000;

    /// <summary>The stages in the order of the way; empty where only readings are given.</summary>
    public IReadOnlyList<ClockStage> Stages { get; init; } = [];

    /// <summary>Shares of new whose arrival is asked for, 0 to 1; a twentieth, a half and nineteen twentieths when left out.</summary>
    public IReadOnlyList<double> Shares { get; init; } = ArrivalClock.UsualShares;

    /// <summary>Readings about a change, to find a dead time and a stirred time from.</summary>
    public IReadOnlyList<StepPoint> Readings { get; init; } = [];

    /// <summary>Into how many tanks the stirred time of the readings is parted.</summary>
    public int Tanks { get; init; } = 1;

    /// <summary>What a case looks like.</summary>
    public static CaseHelp Help { get; } = new(
        """
        {
          "stages"?: [ { "name", "delayHours": dead time, "stirredHours": mean time in what is stirred, "delayUncertainty"?, "stirredUncertainty"?: one standard uncertainty, h, "tanks"?: 1 to 20 } ... in order ],
          "shares"?: [ 0.05, 0.5, 0.95 ],
          "readings"?: [ { "hours": since the change, below 0 before it, "value", "standardUncertainty" } ... ], "tanks"?: 1
        }
        Stages, readings, or both. Hours are of running.
        """,
        """
        { "stages": [ { "name": "temper bin", "delayHours": 18, "stirredHours": 3.4, "delayUncertainty": 0.4, "stirredUncertainty": 0.7 }, { "name": "flour spout", "delayHours": 0.07, "stirredHours": 0.07 } ] }
        """);

    /// <summary>Reads a case; what cannot be is a fault too.</summary>
    public static Parsed<ClockCase> Read(Stream stream) => SeasonCase.ReadAs<ClockCase>(stream).Then(posed => posed.Faults() is { Count: > 0 } faults ? Parsing.Failed<ClockCase>(faults) : Parsing.Got(posed));

    private List<Fault> Faults()
    {
        if (Stages.Any(s => s is null) || Readings.Any(r => r is null))
        {
            return [Fault.AtPath("$", "null in a list", "something in its place")];
        }

        return
        [
            .. Stages.Count == 0 && Readings.Count == 0 ? [Fault.Told("$", "Give stages to be timed, readings to tune from, or both.")] : Array.Empty<Fault>(),
            .. Stages.Count == 0 ? [] : ClockStage.Faults(Stages).Select(f => Fault.Told("$.stages", f)),
            .. Shares.Where(s => !(s is > 0 and < 1)).Select(s => Fault.AtPath("$.shares", $"{s}", "a share above 0 and below 1")),
            .. Shares.Count is 0 or > 50 ? [Fault.Told("$.shares", "Give 1 to 50 shares.")] : Array.Empty<Fault>(),
            .. Readings.Count > MostReadings ? [Fault.Told("$.readings", $"There are {Readings.Count} readings: give at most {MostReadings}.")] : Array.Empty<Fault>(),
        ];
    }
}
