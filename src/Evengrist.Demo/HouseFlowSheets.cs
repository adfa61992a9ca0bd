using Evengrist.Milling.Sheet;
using Evengrist.Records;
using Evengrist.Records.Milling;

namespace Evengrist.Demo;

/// <summary>The flow sheets of the demonstration mill: Unit A for hard wheat, Unit B for hard and soft in turn. Invented within the trade's usual ranges.</summary>
/// <remarks>The letter stands first in the code of a machine (B1, M3), the figure first in that of a stream (1B, 3M).</remarks>
public static class HouseFlowSheets
{
    /// <summary>The units of the mill.</summary>
    public static IReadOnlyList<char> Units { get; } = ['A', 'B'];

    /// <summary>The flow sheet of a unit.</summary>
    /// <exception cref="ArgumentException">The mill has no such unit.</exception>
    public static FlowSheet Of(char unit)
    {
        using var stored = typeof(HouseFlowSheets).Assembly.GetManifestResourceStream($"unit-{char.ToLowerInvariant(unit)}.json") ?? throw new ArgumentException($"The demonstration mill has no unit {unit}.", nameof(unit));
        using var reader = new StreamReader(stored);
        return FlowSheetJson.TryRead(reader.ReadToEnd(), out var sheet, out var faults) ? sheet : throw new InvalidOperationException(string.Join(" ", faults));
    }

    /// <summary>Keeps the sheets of both units, through the use case a person's goes through.</summary>
    internal static void Keep(Mill mill)
    {
        foreach (var unit in Units)
        {
            FlowSheets.Keep(mill, $"U{unit}", new FlowSheetPaper("As the unit stood when the crop year began.", Of(unit)), "Osric Venn", after: 0);
        }
    }
}
