using Evengrist.Milling.Clock;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>When what was changed arrives at the end of each stage, in hours of running since the change. Every ± is k = 2.</summary>
/// <param name="Stages">Stage by stage; empty where none was posed.</param>
/// <param name="Readings">What the readings say of a way; null where none were posed.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record ClockAnswer(IReadOnlyList<ClockStageAnswer> Stages, StepFitAnswer? Readings, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case, or says why readings alone do not tell.</summary>
    public static Reply<ClockAnswer> To(ClockCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        var step = posed.Readings.Count > 0 ? StepFit.Of(posed.Readings, posed.Tanks) : null;
        if (posed.Stages.Count == 0 && step is StepNotFitted none)
        {
            return new(null, none.Reasons);
        }

        return new(new ClockAnswer(
            posed.Stages.Count == 0 ? [] : [.. ArrivalClock.Of(posed.Stages, posed.Shares).Stages.Select(s => new ClockStageAnswer(s.Name, s.Curve.MeanHours, [.. s.Arrivals.Select(a => new ArrivalAnswer(a.Share, a.Hours, 2 * a.StandardUncertainty))]))],
            step is StepFitted fitted ? StepFitAnswer.Of(fitted) : null, (step as StepNotFitted)?.Reasons ?? []), []);
    }
}

/// <summary>Arrivals at the end of a stage.</summary>
public sealed record ClockStageAnswer(string Name, double MeanHours, IReadOnlyList<ArrivalAnswer> Arrivals);

/// <summary>When a share of what passes is new, h.</summary>
public sealed record ArrivalAnswer(double Share, double Hours, double PlusMinus);

/// <summary>A dead time and a stirred time found from readings, h.</summary>
public sealed record StepFitAnswer(double DelayHours, double DelayPlusMinus, double StirredHours, double StirredPlusMinus, bool IsSharp, double Before, double After, double Scatter, int Count)
{
    internal static StepFitAnswer Of(StepFitted f) => new(f.Stage.DelayHours, 2 * f.Stage.DelayUncertainty, f.Stage.StirredHours, 2 * f.Stage.StirredUncertainty, f.IsSharp, f.Before, f.After, f.Scatter, f.Count);
}
