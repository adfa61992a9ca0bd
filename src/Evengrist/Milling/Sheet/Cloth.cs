namespace Evengrist.Milling.Sheet;

/// <summary>One group of sieves of a sifter section or purifier, all with the same cloth: what lies on it or what falls through leaves, the rest goes on to the next.</summary>
/// <param name="ApertureMicrometres">Opening of the cloth, µm; above 0, at most 4000. A trade number differs between weaves and may stand in <paramref name="Note"/>.</param>
/// <param name="Leaves">Whether the overs or the throughs leave here.</param>
/// <param name="To">Where what leaves goes.</param>
/// <param name="Note">The trade number of the cloth or another remark; free text.</param>
public sealed record Cloth(double ApertureMicrometres, ClothSide Leaves, IReadOnlyList<Spout> To, string? Note = null)
{
    /// <summary>What leaves at it, as "overs of 1120 µm".</summary>
    public string Words => $"{(Leaves is ClothSide.None ? "cloth" : Leaves is ClothSide.Overs ? "overs" : "throughs")} of {FlowSheetWords.Number(ApertureMicrometres)} µm";
}

/// <summary>A side of a cloth.</summary>
public enum ClothSide
{
    /// <summary>Not said; the default value is refused.</summary>
    None = 0,

    /// <summary>What lies on the cloth.</summary>
    Overs = 1,

    /// <summary>What falls through it.</summary>
    Throughs = 2,
}

/// <summary>A share of an outlet and where it goes.</summary>
/// <param name="To">Code of a passage or of a product.</param>
/// <param name="Share">Share of the outlet's flow; above 0, all of one outlet together 1.</param>
public sealed record Spout(string To, double Share = 1);
