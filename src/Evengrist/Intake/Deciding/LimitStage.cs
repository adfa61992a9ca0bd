namespace Evengrist.Intake.Deciding;

/// <summary>The stage at which a limit holds, and a result must have been taken.</summary>
public enum LimitStage
{
    /// <summary>Wheat as received, before any processing.</summary>
    AsReceived,

    /// <summary>Flour and other products of milling for people.</summary>
    Product,
}
