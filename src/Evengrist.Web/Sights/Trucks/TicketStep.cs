namespace Evengrist.Web.Sights.Trucks;

/// <summary>A step of a ticket, by the word of its form and address.</summary>
public enum TicketStep
{
    /// <summary>Weighed full.</summary>
    WeighIn,

    /// <summary>The sample was read.</summary>
    Sample,

    /// <summary>Decided where the load goes.</summary>
    Send,

    /// <summary>Weighed empty.</summary>
    WeighOut,
}
