namespace Evengrist.Mix;

/// <summary>How far a mix is from one end of a limit.</summary>
/// <param name="Limit">The end, as the wheat has to keep it.</param>
/// <param name="Wheat">The wheat's predicted value on the limit's basis.</param>
/// <param name="Distance">From the expected value to the end, in the wheat's unit; below zero where the end is not kept.</param>
/// <param name="Spare">The same after the margin that its confidence asks for; equal to the distance without one.</param>
/// <param name="Chance">The chance with which the mix keeps the end, 0 to 1, by the uncertainties as they were given; 0 or 1 where there are none.</param>
public sealed record Headroom(WheatLimit Limit, Predicted Wheat, double Distance, double Spare, double Chance)
{
    /// <summary>Whether the end is kept to a millionth.</summary>
    public bool IsKept => Spare >= -1e-6 * Math.Max(1, Math.Abs(Limit.Value));

    /// <summary>Whether nothing is to spare, to a millionth.</summary>
    public bool IsTight => Math.Abs(Spare) <= 1e-5 * Math.Max(1, Math.Abs(Limit.Value));
}
