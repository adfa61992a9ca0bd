namespace Evengrist.Packing.Orders;

/// <summary>What the quantity of an order counts.</summary>
public enum OrderUnit
{
    /// <summary>Packs.</summary>
    Packs,

    /// <summary>Kilograms net.</summary>
    Kilograms,
}
