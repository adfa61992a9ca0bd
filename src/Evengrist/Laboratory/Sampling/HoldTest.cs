namespace Evengrist.Laboratory.Sampling;

/// <summary>A test-and-hold for micro-organisms: of a lot, n portions are tested, and it is accepted with up to c positive ones. What it finds, and what it does not. Model: docs/model/acceptance-sampling.md.</summary>
/// <param name="Portions">n, 1 or more; each taken at random from the whole lot.</param>
/// <param name="Positive">c, 0 or more and below n; 0 for a pathogen.</param>
/// <param name="GramsEach">Grams of a portion, above 0.</param>
/// <param name="Chance">How surely, above 0 and below 1.</param>
public sealed record HoldTest(int Portions, int Positive, double GramsEach, double Chance)
{
    /// <summary>The share of positive portions that is found as surely: from there on the lot is accepted with 1 − chance or less.</summary>
    public double ShareFound => new AttributesPlan(Portions, Positive).ShareAt(1 - Chance);

    /// <summary>Cells to a gram that are found as surely, evenly spread: a portion is positive with 1 − e^(−λ·grams).</summary>
    public double PerGramFound => -Math.Log(1 - ShareFound) / GramsEach;

    /// <summary>What is to stand on every print of such a test, each a sentence.</summary>
    public IReadOnlyList<string> Statements() =>
    [
        FormattableString.Invariant($"n = {Portions} portions of {GramsEach:0.###} g, accepted with up to c = {Positive} positive."),
        FormattableString.Invariant($"With {100 * Chance:0.##} % confidence it finds a lot of which {100 * ShareFound:0.###} % of such portions or more are positive: {PerGramFound:0.######} cells to a gram, one in {1 / PerGramFound:0.##} g, evenly spread. A lot with fewer, or with clumps, passes oftener than {100 * (1 - Chance):0.##} times in a hundred."),
        Finding.Caution,
    ];
}
