using Evengrist.Bins;
using Evengrist.Bins.BestBin;
using Evengrist.Bins.States;
using Evengrist.Ledger;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Web.Sights;

/// <summary>Neighbouring layers of one district, or thin layers of several that lie on each other; bottom first.</summary>
/// <param name="Origin">The district, or mixed.</param>
/// <param name="Groups">Grams by district, most first.</param>
/// <param name="Mass">How much; a bin's bands sum to its stock to the gram.</param>
/// <param name="Layers">The layers in it, bottom first.</param>
/// <param name="Protein">Protein of the band; null where no load was read.</param>
public sealed record Band(string Origin, IReadOnlyList<(string Origin, double Grams)> Groups, Mass Mass, IReadOnlyList<LayerSight> Layers, BlendProtein? Protein);

/// <summary>One layer of a bin.</summary>
/// <param name="Parcel">Its number in the parcel graph.</param>
/// <param name="Mass">How much; a bin's layers sum to its stock to the gram.</param>
/// <param name="From">When it began to be set down.</param>
/// <param name="Groups">Grams by district, most first.</param>
/// <param name="Loads">Codes of the trucks it came on, most first.</param>
/// <param name="Sources">Codes of the fields and elevators, most first.</param>
/// <param name="Protein">Protein; null where no load was read.</param>
public sealed record LayerSight(
    int Parcel, Mass Mass, Instant From, IReadOnlyList<(string Origin, double Grams)> Groups, IReadOnlyList<string> Loads, IReadOnlyList<string> Sources, BlendProtein? Protein);

/// <summary>What would come out next under one hypothesis.</summary>
/// <param name="Outflow">The hypothesis.</param>
/// <param name="Drawn">How much was posed to be drawn.</param>
/// <param name="Groups">Grams by district, most first.</param>
/// <param name="Loads">Codes of the trucks, most first.</param>
/// <param name="Protein">Protein; null where no load was read.</param>
public sealed record NextOut(Outflow Outflow, Mass Drawn, IReadOnlyList<(string Origin, double Grams)> Groups, IReadOnlyList<string> Loads, BlendProtein? Protein);

/// <summary>A bin as the board and its own page show it.</summary>
public sealed record BinSight(Place Place, Mass Stock, Mass In, Mass Out)
{
    /// <summary>Bands, bottom first; empty where layers were not asked for.</summary>
    public IReadOnlyList<Band> Bands { get; init; } = [];

    /// <summary>Protein of all that lies there.</summary>
    public BlendProtein? Protein { get; init; }

    /// <summary>Falling number, test weight and purity of all that lies there; null where it was not asked for.</summary>
    public BinQuality? Quality { get; init; }

    /// <summary>The house band; null where none is kept.</summary>
    public BinBand? Band { get; init; }

    /// <summary>When its oldest layer began to be set down; null where nothing lies there.</summary>
    public Instant? Oldest { get; init; }

    /// <summary>Mean of when its layers began to be set down, by mass; null where nothing lies there.</summary>
    public Instant? MeanSince { get; init; }

    /// <summary>The warmest temperature read in it within the last week; null where none was.</summary>
    public Reading? Warmest { get; init; }

    /// <summary>What comes out next under each hypothesis.</summary>
    public IReadOnlyList<NextOut> Next { get; init; } = [];

    /// <summary>The open hold.</summary>
    public Happening? Hold => Standing.Bars.Held;

    /// <summary>How it stands.</summary>
    public required BinStanding Standing { get; init; }

    /// <summary>How full it is, 0 to 1; null where no capacity is stated.</summary>
    public double? Fill => Place.Capacity is { } capacity ? (double)Stock.Grams / capacity.Grams : null;

    /// <summary>Whether somebody is inside, or it is under gas.</summary>
    public bool IsStopped => Standing.Gravest <= BinState.UnderGas;
}
