namespace Evengrist.Mix;

/// <summary>What a limit speaks of.</summary>
public enum LimitOn
{
    /// <summary>The wheat mix.</summary>
    Wheat,

    /// <summary>The flour milled from it; carried to the wheat by the mill's own relation.</summary>
    Flour,
}
