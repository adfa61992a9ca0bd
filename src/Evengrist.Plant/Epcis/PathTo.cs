using System.Globalization;

namespace Evengrist.Plant.Epcis;

/// <summary>Where a value stands in a document; written out only when a fault is told.</summary>
internal sealed record PathTo(PathTo? Up, string Step, int Index = -1)
{
    public static PathTo Root { get; } = new(null, "$");

    public PathTo Member(string name) => new(this, name);

    public PathTo Item(int index) => new(this, "", index);

    public override string ToString() => Up is null ? Step : Up + (Index < 0 ? "." + Fault.Show(Step) : string.Create(CultureInfo.InvariantCulture, $"[{Index}]"));
}
