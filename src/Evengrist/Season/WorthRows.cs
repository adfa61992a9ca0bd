namespace Evengrist.Season;

/// <summary>What a t of wheat kept apart is worth, and where.</summary>
/// <param name="PerTonne">Money per t.</param>
/// <param name="Flour">The flour for which it is worth most; null where it is worth most left over at the end.</param>
/// <param name="Period">Number of the period in which.</param>
public sealed record TonneWorth(double PerTonne, string? Flour, int Period);

/// <summary>A point of a curve of worth.</summary>
/// <param name="Value">Value of the property, on the basis of the wheat's own.</param>
/// <param name="Worth">What a t is worth there.</param>
public sealed record WorthPoint(double Value, TonneWorth Worth);

/// <summary>What a truck is worth in a bin.</summary>
/// <param name="Wheat">Code of the wheat it would join.</param>
/// <param name="Home">Code of the bin.</param>
/// <param name="Money">Money for the whole truck; not a number where it cannot go there.</param>
/// <param name="OfTonnes">Of it, its tonnes at the worth of the bin's own wheat.</param>
/// <param name="OfChange">Of it, what it changes of the bin's quality, in every planned use of the bin.</param>
/// <param name="Apart">What the truck would be worth in a bin of its own.</param>
/// <param name="WhyNot">Why it cannot go there; empty where it can.</param>
public sealed record TruckWorth(string Wheat, string Home, double Money, double OfTonnes, double OfChange, double Apart, string WhyNot);
