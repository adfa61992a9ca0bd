namespace Evengrist.Bins.Shape;

/// <summary>The plan of a bin, seen as rings at a distance from the wall: the length of the ring falls evenly with the distance.</summary>
/// <param name="InradiusMetres">Distance from the wall to the middle (or middle line), m.</param>
/// <param name="PerimeterMetres">Length of the wall, m.</param>
/// <param name="LossPerMetre">What a ring loses in length for each metre from the wall: 2π round, 8 rectangular.</param>
internal readonly record struct CrossSection(double InradiusMetres, double PerimeterMetres, double LossPerMetre)
{
    public static CrossSection Round(double diameter) => new(diameter / 2, Math.PI * diameter, 2 * Math.PI);

    public static CrossSection Rectangle(double length, double width) => new(Math.Min(length, width) / 2, 2 * (length + width), 8);

    public double RingAt(double distance) => PerimeterMetres - (LossPerMetre * distance);
}
