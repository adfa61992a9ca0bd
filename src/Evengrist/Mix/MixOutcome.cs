namespace Evengrist.Mix;

/// <summary>What comes of asking for a mix.</summary>
public abstract record MixOutcome;

/// <summary>A mix that keeps every limit, checked.</summary>
/// <param name="Gates">Open gates, the largest first.</param>
/// <param name="Cost">What a tonne costs.</param>
public sealed record MixSolved(IReadOnlyList<GateShare> Gates, MixCost Cost) : MixOutcome
{
    /// <summary>Whether the year's cost was kept least; today's otherwise.</summary>
    public required bool ByYear { get; init; }

    /// <summary>Share by which the mix may cost more than the best there is, 0 where it is proven best.</summary>
    public required double Gap { get; init; }

    /// <summary>Expected properties of the wheat that are known for all open gates.</summary>
    public required IReadOnlyList<Predicted> Wheat { get; init; }

    /// <summary>Expected properties of the flour, by the mill's relations.</summary>
    public required IReadOnlyList<Predicted> Flour { get; init; }

    /// <summary>Distance to each end of each limit.</summary>
    public required IReadOnlyList<Headroom> Limits { get; init; }

    /// <summary>What relaxing each binding limit by a step saves, the most first.</summary>
    public required IReadOnlyList<Saving> Savings { get; init; }

    /// <summary>What the confidences cost for a tonne: this mix's cost less that of the best mix whose means alone keep the limits; null where no limit has a confidence.</summary>
    public double? PriceOfConfidence { get; init; }

    /// <summary>What the gates' steps, number and least openings cost for a tonne, against gates that move freely; null where they do.</summary>
    public double? PriceOfGates { get; init; }

    /// <summary>The old habit; null where none was given.</summary>
    public HabitSight? Habit { get; init; }

    /// <summary>Bins refused, with why.</summary>
    public IReadOnlyList<LeftOut> LeftOut { get; init; } = [];

    /// <summary>What else has to be known, each a sentence.</summary>
    public IReadOnlyList<string> Remarks { get; init; } = [];
}

/// <summary>No mix keeps all limits.</summary>
/// <param name="Clash">Limits that cannot be kept together; leave any one of them out and the rest of them can.</param>
/// <param name="Alone">For each of them that can mend it alone: how far it would have to give.</param>
/// <param name="Together">The least to give in all, in steps of each limit; empty where nothing helps.</param>
/// <param name="LeftOut">Bins refused, with why.</param>
public sealed record MixClash(IReadOnlyList<string> Clash, IReadOnlyList<Remedy> Alone, IReadOnlyList<Remedy> Together, IReadOnlyList<LeftOut> LeftOut) : MixOutcome;

/// <summary>The question cannot be put.</summary>
/// <param name="Faults">Every fault, each a sentence.</param>
public sealed record MixRefused(IReadOnlyList<string> Faults) : MixOutcome;

/// <summary>The solver gave no answer that holds.</summary>
/// <param name="Reason">Why, in a sentence.</param>
public sealed record MixNotSolved(string Reason) : MixOutcome;
