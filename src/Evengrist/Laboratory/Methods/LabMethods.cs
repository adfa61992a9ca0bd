using Evengrist.Ledger;
using Evengrist.Quantities;

namespace Evengrist.Laboratory.Methods;

/// <summary>The methods a laboratory works by. Editable: a mill keeps its own versions.</summary>
/// <param name="Methods">One line for a method and a property.</param>
public sealed record LabMethods(IReadOnlyList<LabMethod> Methods)
{
    private const string Memory = "from memory of the trade's standards; ask the laboratory for its own";

    /// <summary>The table the program begins with: the few limits known, marked from memory, the others empty; what is odd is ours.</summary>
    public static LabMethods Start { get; } = new(
    [
        new("oven 130 °C", Property.Moisture, "%", default, true, Of(0.12m, null, "ISO 712-1, " + Memory), null, 0.8m),
        new("combustion", Property.Protein, "%", Basis.At14, true, Of(0.2m, null, "about 0.2 to 0.3, the tighter taken; unsure, " + Memory), Of(0.5m, null, "about 0.4 to 0.5 at 12 %, the wider taken; unsure, " + Memory), 1.0m),
        new("furnace", Property.Ash, "%", Basis.At14, true, Of(0.02m, 2m, "0.02 below 1 % ash, 2 % of the mean above; ISO 2171, " + Memory), null, 0.08m),
        new("falling number", Property.FallingNumber, "s", default, true, Of(null, 5m, "about 5 to 6 % of the mean, the tighter taken; ISO 3093, unsure, " + Memory), Of(null, 10m, "about 10 % of the mean; ISO 3093, unsure, " + Memory), 80m),
        new("gluten washing", Property.WetGluten, "%", Basis.At14, true, null, null, 4m),
        new("NIR", Property.Moisture, "%", default, false, null, null, 0.8m),
        new("NIR", Property.Protein, "%", Basis.At14, false, null, null, 1.0m),
        new("NIR", Property.Ash, "%", Basis.At14, false, null, null, 0.08m),
    ]);

    /// <summary>The line for a method and a property, case not mattering; null where the table has none.</summary>
    public LabMethod? Of(string code, Property what) => Methods.FirstOrDefault(m => m.What == what && m.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Methods.SelectMany(m => m.Faults()),
        .. Methods.GroupBy(m => (m.Code.ToUpperInvariant(), m.What)).Where(g => g.Count() > 1).Select(g => $"{g.First().Words} stands twice; keep one line."),
        .. Methods.Count == 0 ? ["There is no method in the table."] : Array.Empty<string>(),
    ];

    private static PrecisionLimit Of(decimal? absolute, decimal? percent, string source) => new(FigureMark.Memory, source, absolute, percent);
}
