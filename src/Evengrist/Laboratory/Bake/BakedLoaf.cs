namespace Evengrist.Laboratory.Bake;

/// <summary>One loaf of a bake.</summary>
/// <param name="Flour">Which flour.</param>
/// <param name="Dough">Number of the dough it came from; a dough is of one flour.</param>
/// <param name="VolumeMillilitres">Volume after cooling, mL, 20 to 20,000.</param>
/// <param name="WeightGrams">Weight after cooling, g, 10 to 5,000.</param>
/// <param name="Score">Score of the crumb and shape together by the laboratory's own scale, 0 to 100; null where none was given.</param>
public sealed record BakedLoaf(string Flour, string Dough, double VolumeMillilitres, double WeightGrams, double? Score = null)
{
    /// <summary>Volume over weight, mL/g.</summary>
    public double SpecificVolume => VolumeMillilitres / WeightGrams;

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. string.IsNullOrWhiteSpace(Flour) || string.IsNullOrWhiteSpace(Dough) ? ["A loaf says its flour and its dough."] : Array.Empty<string>(),
        .. VolumeMillilitres is >= 20 and <= 20_000 ? Array.Empty<string>() : [FormattableString.Invariant($"Volume lies from 20 to 20,000 mL; read {VolumeMillilitres}.")],
        .. WeightGrams is >= 10 and <= 5_000 ? Array.Empty<string>() : [FormattableString.Invariant($"Weight lies from 10 to 5,000 g; read {WeightGrams}.")],
        .. Score is null or (>= 0 and <= 100) ? Array.Empty<string>() : [FormattableString.Invariant($"A score lies from 0 to 100; read {Score}.")],
    ];

    /// <summary>What is odd, to be confirmed: a specific volume below 1.5 or above 9 mL/g [ours].</summary>
    public IReadOnlyList<string> Questions() => SpecificVolume is >= 1.5 and <= 9 ? [] : [FormattableString.Invariant($"A loaf of {Flour}, dough {Dough}, has {SpecificVolume:0.00} mL/g: are volume and weight right?")];
}
