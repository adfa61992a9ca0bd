namespace Evengrist.Plant.Prints.Labels;

/// <summary>A black box, mm.</summary>
internal sealed record DrawnBox(double X, double Y, double Across, double Down);
