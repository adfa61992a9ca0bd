namespace Evengrist.Packing.NetContent;

/// <summary>What a package weighs after its flour has lost or taken up water on the way to the buyer: its dry matter stays.</summary>
/// <param name="Packed">Moisture when packed, per cent, at least 0 and below 100.</param>
/// <param name="Sold">Moisture when sold, per cent, at least 0 and below 100.</param>
public sealed record DryingOut(double Packed, double Sold)
{
    /// <summary>What is wrong, in a sentence; null where nothing is.</summary>
    public string? Fault => Packed is >= 0 and < 100 && Sold is >= 0 and < 100 ? null : "Moisture is at least 0 and below 100 %.";

    /// <summary>What must be packed so that a weight is there when sold: sold · (100 − moisture when sold)/(100 − moisture when packed), grams.</summary>
    /// <param name="sold">Net weight when sold, grams.</param>
    public double ToPack(double sold) => sold * (100 - Sold) / (100 - Packed);
}
