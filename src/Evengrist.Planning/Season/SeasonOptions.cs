namespace Evengrist.Planning.Season;

/// <summary>How a season is to be planned.</summary>
public sealed record SeasonOptions
{
    /// <summary>Where a plan that can be milled may stop: (cost − bound)/|cost|. A share, 0 or more.</summary>
    public double RelativeGap { get; init; } = 0.003;

    /// <summary>Longest time for the plan that can be milled; null for no limit.</summary>
    public TimeSpan? Longest { get; init; } = TimeSpan.FromSeconds(10);

    /// <summary>How often the quality of bins with layers is reckoned anew from what the last plan draws, 0 or more.</summary>
    public int LayerPasses { get; init; } = 3;

    /// <summary>Layers are taken as settled where no value a limit looks at differs by more, in units of the property.</summary>
    public double LayerTolerance { get; init; } = 0.005;
}
