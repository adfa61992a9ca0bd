using System.Globalization;

namespace Evengrist.Plant.Epcis;

/// <summary>Where a value stands in a document; written out only when a fault is told.</summary>
internal sealed record PathTo(PathTo? Up, string Step)
{
    public static PathTo Root { get; } = new(null, "$");

    public PathTo Member(string name) => new(this, "." + Fault.Show(name));

    public PathTo Item(int index) => new(this, string.Create(CultureInfo.InvariantCulture, $"[{index}]"));

    public override string ToString() => Up is null ? Step : Up + Step;
}
