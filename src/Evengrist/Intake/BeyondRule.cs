namespace Evengrist.Intake;

/// <summary>How a scale goes on outside its table. The names are stored.</summary>
public enum BeyondRule
{
    /// <summary>Nothing is agreed there: such a load cannot be settled by the scale.</summary>
    NotCovered = 0,

    /// <summary>The effect of the end step holds on.</summary>
    Hold = 1,

    /// <summary>Each further step adds or takes the same.</summary>
    PerStep = 2,
}
