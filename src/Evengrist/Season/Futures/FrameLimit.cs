namespace Evengrist.Season.Futures;

/// <summary>One side of a limit of a flour, on the scale of its property, with what a plan has been granted and what is tolerated.</summary>
/// <param name="Property">Number of the property in the frame.</param>
/// <param name="IsFloor">Whether it is a floor on the scale.</param>
/// <param name="ByDry">Whether it averages by dry matter.</param>
/// <param name="MissPrice">Money for a t·unit of the scale.</param>
/// <param name="Aim">The edge that a mix is made to keep, by period.</param>
/// <param name="Kept">The edge that the true mix has to keep to count as on target, by period.</param>
internal sealed record FrameLimit(int Property, bool IsFloor, bool ByDry, double MissPrice, double[] Aim, double[] Kept);
