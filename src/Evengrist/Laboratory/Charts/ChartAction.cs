using System.Diagnostics.CodeAnalysis;
using NodaTime;

namespace Evengrist.Laboratory.Charts;

/// <summary>What was done about a signal of a chart.</summary>
/// <param name="Chart">The chart: what its limits are kept under.</param>
/// <param name="Point">When the reading that signals was taken.</param>
/// <param name="Signal">Which rule, in words.</param>
/// <param name="Done">What was found and done.</param>
public sealed record ChartAction(string Chart, Instant Point, string Signal, string Done)
{
    /// <summary>The kind of paper it is kept as.</summary>
    public const string PaperKind = "chart-action";

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public IReadOnlyList<string> Faults() =>
        [.. string.IsNullOrWhiteSpace(Done) ? ["Say what was found and done, even if nothing: the next shift reads it."] : Array.Empty<string>(), .. string.IsNullOrWhiteSpace(Signal) ? ["Say which signal it was."] : Array.Empty<string>()];

    /// <summary>As JSON.</summary>
    public string ToJson() => LabJson.Write(this);

    /// <summary>Reads it back.</summary>
    public static bool TryRead(string json, [NotNullWhen(true)] out ChartAction? action, out IReadOnlyList<string> faults) => LabJson.TryRead(json, a => a.Faults(), out action, out faults);
}
