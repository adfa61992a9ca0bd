using Evengrist.Milling.Learning;
using Evengrist.Milling.Sheet;
using Evengrist.Quantities;
using NodaTime;

namespace Evengrist.Plant.Cases;

/// <summary>A test of a mill, posed.</summary>
/// <param name="Name">What it is called.</param>
public sealed record PosedMillTest(string Name) : TestReadings
{
    /// <summary>When it was taken; drift needs it.</summary>
    public Instant? At { get; init; }

    /// <summary>The wheat then; the case's where left out.</summary>
    public PosedWheat? Wheat { get; init; }

    internal IReadOnlyList<string> Faults(FlowSheet sheet, PosedWheat wheat, Basis basis) => FaultsOf(Name, sheet, Wheat ?? wheat, basis);

    internal MillTest Of(FlowSheet sheet, PosedWheat wheat, Basis basis) => Made(Name, sheet, Wheat ?? wheat, basis);
}
