namespace Evengrist.Web.Sights.Traces;

/// <summary>A box of the flow picture.</summary>
/// <param name="Column">Its column, from 0.</param>
/// <param name="Name">What stands beside it.</param>
/// <param name="Grams">The greater of what came in and what went out.</param>
public sealed record FlowNode(int Column, string Name, double Grams)
{
    /// <summary>Left edge, pixels.</summary>
    public double X { get; init; }

    /// <summary>Upper edge, pixels.</summary>
    public double Y { get; init; }

    /// <summary>Height, pixels.</summary>
    public double Height { get; init; }
}

/// <summary>A band of the flow picture.</summary>
/// <param name="From">The box it leaves.</param>
/// <param name="To">The box it enters.</param>
/// <param name="Grams">How much.</param>
/// <param name="Path">Its outline.</param>
public sealed record FlowBand(FlowNode From, FlowNode To, double Grams, string Path);
