namespace Evengrist.Season.Futures;

/// <summary>How far trucks of a wheat that is to come differ: a delivery of few of them lies further from its district than one of many.</summary>
/// <param name="Wheat">Code of the wheat.</param>
/// <param name="TruckTonnes">What a truck usually carries, t, above 0.</param>
public sealed record TruckSpread(string Wheat, double TruckTonnes)
{
    /// <summary>Standard deviation between the trucks of a delivery about its mean.</summary>
    public IReadOnlyList<PropertySpread> Quality { get; init; } = [];

    /// <summary>Standard deviation of the mean of a delivery about its district's: √(lot² + truck²/n), n its trucks, at least one.</summary>
    /// <param name="lot">That of a delivery of very many trucks, 0 or more.</param>
    /// <param name="truck">That of a single truck within a delivery, 0 or more.</param>
    /// <param name="tonnes">What the delivery brings, t.</param>
    public double Of(double lot, double truck, double tonnes) => Math.Sqrt((lot * lot) + (truck * truck / Math.Max(1, tonnes / TruckTonnes)));
}
