namespace Evengrist.Bins.BestBin;

/// <summary>What a tonne of wheat is worth to the mill by class and protein, as entered. A paper of kind <c>band-values</c>.</summary>
/// <param name="Currency">Three letters.</param>
/// <param name="Classes">By class: points of protein and money, the protein rising.</param>
/// <param name="Source">Whose values they are, in words.</param>
public sealed record BandValues(string Currency, IReadOnlyDictionary<string, IReadOnlyList<ValuePoint>> Classes, string Source = "")
{
    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Currency is { Length: 3 } && Currency.All(char.IsAsciiLetterUpper) ? Array.Empty<string>() : ["A currency has three capital letters, such as USD."],
        .. Classes.Where(c => c.Value.Count == 0 || c.Value.Zip(c.Value.Skip(1)).Any(p => !(p.First.ProteinPercentAt12 < p.Second.ProteinPercentAt12)))
            .Select(c => $"The values of class {c.Key} need at least one point, with protein rising from point to point."),
    ];

    /// <summary>Money for a tonne of a class at a mean protein: straight between points, held at the ends; null where the class has no values.</summary>
    public double? PerTonne(string wheatClass, double proteinPercentAt12)
    {
        if (!Classes.TryGetValue(wheatClass, out var points) || points.Count == 0)
        {
            return null;
        }

        for (var i = 1; i < points.Count; i++)
        {
            if (proteinPercentAt12 < points[i].ProteinPercentAt12)
            {
                var (a, b) = (points[i - 1], points[i]);
                var part = (Math.Max(proteinPercentAt12, a.ProteinPercentAt12) - a.ProteinPercentAt12) / (b.ProteinPercentAt12 - a.ProteinPercentAt12);
                return a.PerTonne + (part * (b.PerTonne - a.PerTonne));
            }
        }

        return points[^1].PerTonne;
    }
}

/// <summary>A point of a value table.</summary>
/// <param name="ProteinPercentAt12">Protein, per cent at 12 % moisture.</param>
/// <param name="PerTonne">Money for a tonne.</param>
public sealed record ValuePoint(double ProteinPercentAt12, double PerTonne);
