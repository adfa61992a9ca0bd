namespace Evengrist.Milling.Learning;

/// <summary>How far a measured figure may lie from what the model means by it, one standard uncertainty each: the measuring and the model's own shortfall. Ours, but for the ash and protein methods [memory].</summary>
public sealed record TestErrors
{
    /// <summary>The usual.</summary>
    public static TestErrors Usual { get; } = new();

    /// <summary>Weighing of a stream, share of its yield.</summary>
    public double YieldShare { get; init; } = 0.03;

    /// <summary>Weighing of a stream, points of yield.</summary>
    public double YieldPoints { get; init; } = 0.03;

    /// <summary>Ash of a stream, points.</summary>
    public double AshPoints { get; init; } = 0.012;

    /// <summary>Protein of a stream, points.</summary>
    public double ProteinPoints { get; init; } = 0.12;

    /// <summary>A release or a test sieve, points.</summary>
    public double ReleasePoints { get; init; } = 1.0;

    /// <summary>Shortfall of the model in a yield, share of it.</summary>
    public double ModelYieldShare { get; init; } = 0.05;

    /// <summary>Shortfall of the model in an ash, share of it.</summary>
    public double ModelAshShare { get; init; } = 0.03;

    /// <summary>Shortfall of the model in a protein, share of it.</summary>
    public double ModelProteinShare { get; init; } = 0.015;

    /// <summary>Shortfall of the model in a release, points.</summary>
    public double ModelReleasePoints { get; init; } = 1.0;

    /// <summary>Ash of the whole wheat, points.</summary>
    public double WheatAshPoints { get; init; } = 0.03;

    /// <summary>Protein of the whole wheat, points.</summary>
    public double WheatProteinPoints { get; init; } = 0.15;
}
