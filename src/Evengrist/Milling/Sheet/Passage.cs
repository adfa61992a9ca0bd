namespace Evengrist.Milling.Sheet;

/// <summary>A passage: what grinds or beats, and the cloths that divide what comes of it. What no cloth has let leave goes to <see cref="Rest"/>.</summary>
/// <param name="Code">The mill's own short name, as B1 or M3; unlike any other passage or product.</param>
/// <param name="Kind">What it is for.</param>
/// <param name="Cloths">The cloths in the order stock meets them.</param>
/// <param name="Rest">Where what is left goes after the last cloth.</param>
public sealed record Passage(string Code, PassageKind Kind, IReadOnlyList<Cloth> Cloths, IReadOnlyList<Spout> Rest)
{
    /// <summary>Its rolls; null where it has none.</summary>
    public RollPair? Rolls { get; init; }

    /// <summary>Whether a detacher breaks flakes behind smooth rolls.</summary>
    public bool Detacher { get; init; }

    /// <summary>Cloth area of the section, m²; above 0, at most 200. Width times length for a purifier.</summary>
    public double ClothSquareMetres { get; init; } = 5;

    /// <summary>Speed of a purifier's air through its cloths, m/s; 0.2 to 3. Null for anything but a purifier.</summary>
    public double? AirMetresPerSecond { get; init; }

    /// <summary>Where what a purifier's air lifts goes; empty for anything but a purifier.</summary>
    public IReadOnlyList<Spout> Lifted { get; init; } = [];

    /// <summary>Outlet by which the overs of the scalping cloth leave, the first whose overs leave: what a release is told by. Null where there are no rolls or no such cloth.</summary>
    public int? ScalpOutlet
    {
        get
        {
            // Behind rolls nothing is lifted, so that outlets count as cloths do.
            var scalp = Rolls is null ? -1 : Cloths.ToList().FindIndex(c => c.Leaves is ClothSide.Overs);
            return scalp < 0 ? null : scalp;
        }
    }

    /// <summary>Every outlet, in order: what the air lifts first, each cloth's, then the rest.</summary>
    public IEnumerable<IReadOnlyList<Spout>> Outlets => [.. Lifted.Count > 0 ? [Lifted] : Array.Empty<IReadOnlyList<Spout>>(), .. Cloths.Select(c => c.To), Rest];
}
