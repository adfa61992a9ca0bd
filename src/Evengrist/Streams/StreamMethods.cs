using System.Globalization;

namespace Evengrist.Streams;

/// <summary>How unsure a reading on a stream is: one standard uncertainty of each method. Editable; what the program begins with is from memory or ours and not tuned to a laboratory.</summary>
/// <remarks>Errors of two streams are taken as independent; what an oven or a scale has wrong for all of them alike is not in it.</remarks>
public sealed record StreamMethods
{
    /// <summary>Where the program's own figures come from.</summary>
    public const string Source = "ash 0.01, protein 0.10, falling number 5 %: usual repeatability, from memory, taken as one standard uncertainty; starch damage 0.3 and yield 2 % of itself: ours";

    /// <summary>Ash, per cent.</summary>
    public double Ash { get; init; } = 0.01;

    /// <summary>Protein, per cent.</summary>
    public double Protein { get; init; } = 0.10;

    /// <summary>Falling number, share of the reading.</summary>
    public double FallingNumberShare { get; init; } = 0.05;

    /// <summary>Damaged starch, per cent.</summary>
    public double StarchDamage { get; init; } = 0.3;

    /// <summary>Yield, share of itself: how well a spout is weighed.</summary>
    public double YieldShare { get; init; } = 0.02;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Of("Ash", Ash, 1), .. Of("Protein", Protein, 5), .. Of("Starch damage", StarchDamage, 5), .. Of("Falling number", FallingNumberShare, 0.5), .. Of("Yield", YieldShare, 0.5),
    ];

    private static IEnumerable<string> Of(string what, double value, double most)
    {
        if (!(value >= 0 && value <= most))
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{what}: its standard uncertainty lies from 0 to {most}; got {value}.");
        }
    }
}
