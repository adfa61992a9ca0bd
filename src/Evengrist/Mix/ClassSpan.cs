namespace Evengrist.Mix;

/// <summary>What share of a mix a class of wheat may have.</summary>
/// <param name="Class">The class.</param>
/// <param name="Least">Least, 0 to 1.</param>
/// <param name="Most">Most, 0 to 1.</param>
public sealed record ClassSpan(string Class, double Least, double Most);
