namespace Evengrist.Streams;

/// <summary>A stream on the ash curve.</summary>
/// <param name="Stream">The stream.</param>
/// <param name="Together">It and all before it.</param>
/// <param name="ShareOfFlour">What that is of all flour, 0 to 1.</param>
public sealed record AshPoint(MillStream Stream, StreamSum Together, double ShareOfFlour);

/// <summary>Where flour of an ash ends on the curve.</summary>
/// <param name="AshPercent">The ash wanted.</param>
/// <param name="Divided">The stream that is divided; null where all flour together keeps it.</param>
/// <param name="DividedYield">How much of that stream goes in, per cent of the wheat.</param>
/// <param name="Flour">The flour up to there.</param>
public sealed record AshCut(double AshPercent, MillStream? Divided, double DividedYield, StreamSum Flour);
