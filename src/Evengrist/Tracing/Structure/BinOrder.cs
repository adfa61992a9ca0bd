namespace Evengrist.Tracing.Structure;

/// <summary>In which order trucks fill the bins that a mix is drawn from.</summary>
public enum BinOrder
{
    /// <summary>One bin is filled whole before the next is begun: trucks of one day lie together.</summary>
    OneAfterAnother,

    /// <summary>Truck by truck into the next of the open bins: trucks of one day lie spread.</summary>
    InTurn,
}
