namespace Evengrist.Numerics.Mixed;

/// <summary>A linear model with random groups: y = Xβ + Σ Zₖuₖ + e, uₖ independent with one variance for each grouping.</summary>
/// <param name="Values">y, n of them, 3 to <see cref="MostValues"/>.</param>
/// <param name="Fixed">X, a row for each value, of p columns; of full rank, p below n.</param>
/// <param name="Groups">For each grouping the group of each value, in any numbering; one grouping or more.</param>
public sealed record MixedSpec(IReadOnlyList<double> Values, IReadOnlyList<IReadOnlyList<double>> Fixed, IReadOnlyList<IReadOnlyList<int>> Groups)
{
    /// <summary>Most values: the matrix of their covariances is dense.</summary>
    public const int MostValues = 500;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Values.Count is >= 3 and <= MostValues && Values.All(double.IsFinite) ? Array.Empty<string>() : [$"3 to {MostValues} values are needed; there are {Values.Count}."],
        .. Fixed.Count == Values.Count && Fixed.All(r => r.Count == Fixed[0].Count && r.All(double.IsFinite)) ? Array.Empty<string>() : ["Each value needs its row of the fixed part, all of one length."],
        .. Fixed.Count > 0 && Fixed[0].Count > 0 && Fixed[0].Count < Values.Count ? Array.Empty<string>() : ["The fixed part has at least one column and fewer than there are values."],
        .. Groups.Count > 0 && Groups.All(g => g.Count == Values.Count) ? Array.Empty<string>() : ["Each grouping says the group of each value."],
        .. Groups.Where(g => g.Count == Values.Count && (g.Distinct().Count() < 2 || g.Distinct().Count() == g.Count)).Select(_ => "A grouping has at least two groups, and at least one of them two values: else its variance cannot be told from the rest."),
    ];
}
