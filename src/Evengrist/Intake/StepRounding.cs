namespace Evengrist.Intake;

/// <summary>Which step counts for a recorded value between two steps. The names are stored.</summary>
public enum StepRounding
{
    /// <summary>Not a rule; the default value is refused.</summary>
    None = 0,

    /// <summary>The step at or below the value: a part of a step is not credited.</summary>
    Floor = 1,

    /// <summary>The nearest step; half way counts as the upper one.</summary>
    Nearest = 2,

    /// <summary>The step at or above the value: one begun counts as a whole one, as discounts are usually taken.</summary>
    Begun = 3,
}
