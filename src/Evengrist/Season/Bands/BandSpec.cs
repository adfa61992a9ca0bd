using Evengrist.Quantities;

namespace Evengrist.Season.Bands;

/// <summary>A harvest of one class that is to be laid into bins by what trucks read, before it comes.</summary>
/// <remarks>Model: docs/model/season-bands.md.</remarks>
/// <param name="WheatClass">The class.</param>
/// <param name="Parts">What each district is expected to bring.</param>
/// <param name="Bins">Bins free for it: no more bands than this, 1 to 20.</param>
public sealed record BandSpec(string WheatClass, IReadOnlyList<HarvestPart> Parts, int Bins)
{
    /// <summary>Basis at which protein is read and edges are given.</summary>
    public Basis Basis { get; init; } = Basis.At12;

    /// <summary>Standard deviation of a truck's reading of protein against its true mean: probe and instrument together, points, 0 or more.</summary>
    public double ReadingSpread { get; init; }

    /// <summary>Falling numbers at which a harvest may be parted, s, rising; none for protein alone.</summary>
    public IReadOnlyList<double> FallingNumberEdges { get; init; } = [];

    /// <summary>Standard deviation of a truck's reading of falling number, s, 0 or more.</summary>
    public double FallingNumberReadingSpread { get; init; }

    /// <summary>Share of the harvest that comes in each period of the year, adding up to 1; empty where all of it lies there when the year begins.</summary>
    public IReadOnlyList<double> Arriving { get; init; } = [];

    /// <summary>Step of the edges of protein, points, above 0.</summary>
    public double Step { get; init; } = 0.1;
}

/// <summary>What a district is expected to bring of a class.</summary>
/// <param name="District">The district.</param>
/// <param name="Tonnes">t as it lies, 0 or more.</param>
/// <param name="MoisturePercent">Moisture, per cent, wet basis.</param>
/// <param name="Quality">Mean quality; the spread of each value is that from truck to truck. Protein is demanded.</param>
public sealed record HarvestPart(string District, double Tonnes, double MoisturePercent, SeasonQuality Quality);

/// <summary>One band.</summary>
/// <param name="From">Protein from which a truck belongs to it as it reads, per cent; −∞ for the lowest.</param>
/// <param name="To">Protein up to which it belongs to it; +∞ for the highest.</param>
/// <param name="FallingNumberFrom">Falling number from which, s; 0 for none.</param>
/// <param name="FallingNumberTo">Falling number up to which, s; +∞ for none.</param>
/// <param name="Tonnes">t expected in it.</param>
/// <param name="MoisturePercent">Mean moisture, per cent, wet basis.</param>
/// <param name="Quality">Expected true mean of what is in it, trucks that read wrongly included.</param>
/// <param name="Strays">Share of it whose true protein lies outside the band, 0 to 1.</param>
public sealed record HarvestBand(double From, double To, double FallingNumberFrom, double FallingNumberTo, double Tonnes, double MoisturePercent, SeasonQuality Quality, double Strays);

/// <summary>Bands for a number of bins.</summary>
/// <param name="Bands">Lowest protein first, within the lowest falling number first.</param>
/// <param name="Worth">Worth of the harvest so parted by the prices it was designed with, money.</param>
public sealed record BandDesign(IReadOnlyList<HarvestBand> Bands, double Worth);
