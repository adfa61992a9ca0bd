namespace Evengrist.Packing.Lines;

/// <summary>A product that a line can make.</summary>
/// <param name="Product">Code of the product.</param>
/// <param name="TonnesPerHour">How fast, above 0.</param>
/// <param name="Bin">The bin that feeds it; null for the bin of its flour that is connected to the line.</param>
public sealed record LineRate(string Product, double TonnesPerHour, string? Bin = null);
