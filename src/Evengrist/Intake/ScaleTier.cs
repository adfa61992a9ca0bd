namespace Evengrist.Intake;

/// <summary>A run of even steps: from where the table has come so far up to a value, each step adds the same.</summary>
/// <param name="Until">The value at which the last step of the run begins; a whole number of steps above the beginning of the run.</param>
/// <param name="StepSize">Size of a step in the unit of the factor, above 0.</param>
/// <param name="Each">What each step adds to the effect: money for each unit of the price, or per cent of the mass; negative takes.</param>
public sealed record ScaleTier(decimal Until, decimal StepSize, decimal Each)
{
    /// <summary>The most steps one table may have, tiers laid out; by design.</summary>
    public const int MostSteps = 2000;

    private const decimal MostValue = 1_000_000m;

    // A run that is not sound is left out here; the check of the scale names it.
    internal static IReadOnlyList<ScaleStep> LaidOut(IReadOnlyList<ScaleStep> steps, IReadOnlyList<ScaleTier> tiers)
    {
        var table = steps.ToList();
        foreach (var tier in tiers.TakeWhile(t => table.Count > 0 && t.StepsFrom(table[^1].From) is { } more && table.Count + more <= MostSteps))
        {
            var from = table[^1];
            table.AddRange(Enumerable.Range(1, tier.StepsFrom(from.From)!.Value).Select(i => new ScaleStep(from.From + i * tier.StepSize, from.Effect + i * tier.Each)));
        }

        return table;
    }

    /// <summary>How many steps the run has from a value on; null where they are no whole number from 1.</summary>
    internal int? StepsFrom(decimal from) => StepSize is >= 0.001m and <= MostValue && Math.Abs(from) <= MostValue && Math.Abs(Until) <= MostValue && Math.Abs(Each) <= MostValue
        && Until > from && Until - from <= MostSteps * StepSize && (Until - from) % StepSize == 0m
        ? (int)((Until - from) / StepSize)
        : null;
}
