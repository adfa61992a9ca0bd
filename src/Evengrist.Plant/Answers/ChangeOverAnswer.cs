using Evengrist.Plant.Cases;
using Evengrist.Season.ChangeOver;

namespace Evengrist.Plant.Answers;

/// <summary>A change of crop laid out.</summary>
/// <param name="Flours">In the order asked.</param>
public sealed record ChangeOverAnswer(IReadOnlyList<FlourChangeAnswer> Flours)
{
    /// <summary>The steps, or why there are none.</summary>
    public static Reply<ChangeOverAnswer> Of(ChangeOverOutcome outcome, ChangeOverCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return outcome switch
        {
            ChangeOverLaid laid => new Reply<ChangeOverAnswer>(new ChangeOverAnswer([.. laid.Flours.Select(f => Flour(f, posed))]), []),
            ChangeOverRefused refused => new Reply<ChangeOverAnswer>(null, [.. refused.Faults.Select(f => f.ToString())]),
            _ => throw new ArgumentException($"A change of crop ended as {outcome?.GetType().Name}.", nameof(outcome)),
        };
    }

    private static FlourChangeAnswer Flour(FlourChangeOver flour, ChangeOverCase posed) => new(
        flour.Flour, 100 * flour.LargestStep,
        [.. flour.Steps.Select(s => new ChangeStepAnswer(
            100 * s.Share, posed.FirstDay.PlusDays(s.FirstDay).ToString("uuuu-MM-dd", null), [.. s.Moves.Select(m => new ChangeMoveAnswer(m.What.ToString(), m.Value, m.Spread, m.Move, m.MoveSpread, 100 * m.Kept))]))]);
}

/// <summary>A flour through the change; the largest even step, per cent, that keeps the largest moves: 0 where none does, 100 where none is named.</summary>
public sealed record FlourChangeAnswer(string Flour, double LargestStepPercent, IReadOnlyList<ChangeStepAnswer> Steps);

/// <summary>A step: new crop in the mix, per cent, and the first day of it.</summary>
public sealed record ChangeStepAnswer(double NewPercent, string FirstDay, IReadOnlyList<ChangeMoveAnswer> Moves);

/// <summary>A property of the wheat mix at a step with one standard deviation, its move against the step before, and the chance that its limits are kept, per cent; null without a limit.</summary>
public sealed record ChangeMoveAnswer(string What, double Value, double Spread, double Move, double MoveSpread, double? KeptPercent);
