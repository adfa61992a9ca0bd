namespace Evengrist.Packing.Orders;

/// <summary>How far an order is.</summary>
public enum OrderState
{
    /// <summary>Something of it is still to be packed, and no kept plan has it.</summary>
    Open,

    /// <summary>A kept plan says when it is packed.</summary>
    Planned,

    /// <summary>All of it stands packed or has gone.</summary>
    Packed,

    /// <summary>All of it has gone to the customer.</summary>
    Shipped,

    /// <summary>Called off.</summary>
    Cancelled,
}
