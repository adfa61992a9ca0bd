using Evengrist.Laboratory.Charts;

namespace Evengrist.Laboratory.Rings;

/// <summary>Many mills beside each other on one property: capability as reported and of the flour, the worst first. Model: docs/model/ring-tests.md.</summary>
public static class MillsModel
{
    /// <summary>Most mills and ring results [ours].</summary>
    public const int MostMills = 500, MostResults = 5000;

    /// <summary>Ranks the mills by capability as reported, the least first.</summary>
    /// <param name="mills">Without faults.</param>
    /// <param name="ring">Results of ring tests; empty where there was none.</param>
    /// <param name="lower">Lower limit of the flour; null for none.</param>
    /// <param name="upper">Upper limit; null for none.</param>
    /// <param name="reference">The laboratory whose bias is 0; null for the mean of all.</param>
    /// <exception cref="ArgumentException">Something cannot be.</exception>
    public static IReadOnlyList<MillStanding> Of(IReadOnlyList<MillFigures> mills, IReadOnlyList<RingResult> ring, double? lower, double? upper, string? reference)
    {
        if (Faults(mills, ring, lower, upper, reference) is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults));
        }

        var biases = RingModel.Biases(ring, reference).ToDictionary(b => b.Laboratory);
        return [.. mills.Select(m => One(m, biases.GetValueOrDefault(m.Laboratory), lower, upper)).OrderBy(m => m.Reported.Cpk).ThenBy(m => m.Figures.Mill, StringComparer.Ordinal)];
    }

    /// <summary>What is wrong, each a sentence that says what to do; empty where nothing is.</summary>
    public static IReadOnlyList<string> Faults(IReadOnlyList<MillFigures> mills, IReadOnlyList<RingResult> ring, double? lower, double? upper, string? reference)
    {
        ArgumentNullException.ThrowIfNull(mills);
        ArgumentNullException.ThrowIfNull(ring);
        return
        [
            .. mills.Count is >= 1 and <= MostMills ? Array.Empty<string>() : [$"There are {mills.Count} mills: 1 to {MostMills} are ranked."],
            .. ring.Count <= MostResults ? Array.Empty<string>() : [$"There are {ring.Count} ring results: at most {MostResults} are taken."],
            .. mills.Where(m => string.IsNullOrWhiteSpace(m.Mill) || string.IsNullOrWhiteSpace(m.Laboratory)).Take(1).Select(_ => "Every line names a mill and its laboratory."),
            .. mills.Where(m => !(m.Deviation > 0 && double.IsFinite(m.Deviation) && double.IsFinite(m.Mean)) || m.Count < 2).Select(m => $"{m.Mill}: a mean, a standard deviation above 0 and two results or more are needed."),
            .. mills.GroupBy(m => m.Mill).Where(g => g.Count() > 1).Select(g => $"{g.Key} stands there {g.Count()} times: one line for each mill."),
            .. ring.Any(r => string.IsNullOrWhiteSpace(r.Laboratory) || string.IsNullOrWhiteSpace(r.Sample) || !double.IsFinite(r.Value)) ? ["A ring result names laboratory, sample and a number."] : Array.Empty<string>(),
            .. lower is null && upper is null ? ["Give a lower limit, an upper limit, or both."] : Array.Empty<string>(),
            .. lower >= upper ? ["The lower limit lies below the upper."] : Array.Empty<string>(),
            .. reference is null || ring.Any(r => r.Laboratory == reference) ? Array.Empty<string>() : [$"The reference laboratory {reference} has no ring result."],
        ];
    }

    private static MillStanding One(MillFigures mill, LaboratoryBias? bias, double? lower, double? upper) => new(
        mill, Capability.Of(mill.Mean, mill.Deviation, mill.Count, lower, upper), bias,
        bias?.Bias is { } off ? Capability.Of(mill.Mean - off, mill.Deviation, mill.Count, lower, upper) : null);
}
