namespace Evengrist.Planning.Solving;

/// <summary>How a problem is to be solved.</summary>
public sealed record SolveOptions
{
    /// <summary>The engine; null takes the simplex for problems without whole numbers and branch and bound for the rest.</summary>
    public LinearEngine? Engine { get; init; }

    /// <summary>Where a solver of whole numbers may stop: (answer − bound)/|answer|. A share, 0 or more.</summary>
    public double RelativeGap { get; init; } = 1e-6;

    /// <summary>Longest time; null for no limit.</summary>
    public TimeSpan? Longest { get; init; }

    /// <summary>Values of columns to start from, by column number; a solver may use them or not.</summary>
    public IReadOnlyDictionary<int, double>? Start { get; init; }
}
