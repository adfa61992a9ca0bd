namespace Evengrist.Laboratory.Methods;

/// <summary>The instruments of a laboratory. Editable: a mill keeps its own versions.</summary>
/// <param name="Instruments">One line for an instrument.</param>
public sealed record LabInstruments(IReadOnlyList<LabInstrument> Instruments)
{
    /// <summary>None: instruments are a mill's own.</summary>
    public static LabInstruments Start { get; } = new([]);

    /// <summary>The instrument with the code, case not mattering; null where the table has none.</summary>
    public LabInstrument? Of(string code) => Instruments.FirstOrDefault(i => i.Code.Equals(code.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
    [
        .. Instruments.SelectMany(i => i.Faults()),
        .. Instruments.GroupBy(i => i.Code, StringComparer.OrdinalIgnoreCase).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands twice; keep one line."),
    ];
}
