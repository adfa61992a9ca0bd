using System.Globalization;
using Evengrist.Ledger;

namespace Evengrist.Intake.Grading;

/// <summary>The weighings of one sample in grams, from which percentages follow.</summary>
/// <param name="AsReceived">W: the sample as received.</param>
/// <param name="Dockage">D: dockage taken out of it.</param>
/// <remarks>
/// dockage % = 100 D/W; shrunken and broken % = 100 S/(portion sieved), the portion being W − D where no other is named; a picked factor % = 100 x/p.
/// Source: bases of 7 CFR 810.2203 and 810.102, 2015 edition; the arithmetic follows from them. Nothing is rounded here.
/// </remarks>
public sealed record SampleWeighings(decimal AsReceived, decimal Dockage)
{
    private const decimal Most = 100_000m;

    /// <summary>S: what passed the oblong sieve; null where it was not sieved.</summary>
    public decimal? ThroughSieve { get; init; }

    /// <summary>The portion that was sieved; W − D where nothing is said.</summary>
    public decimal? Sieved { get; init; }

    /// <summary>What was picked by hand out of which portion.</summary>
    public IReadOnlyList<Picked> Picked { get; init; } = [];

    /// <summary>The percentages that follow; only where <see cref="Faults"/> are none.</summary>
    public IReadOnlyList<WeighedFinding> Findings()
    {
        var found = new List<WeighedFinding> { Of(Property.Dockage, Dockage, AsReceived) };
        if (ThroughSieve is { } through)
        {
            found.Add(Of(Property.ShrunkenAndBroken, through, Sieved ?? AsReceived - Dockage));
        }

        found.AddRange(Picked.Select(p => Of(p.What, p.Grams, p.Portion)));
        return found;
    }

    /// <summary>What is wrong, each a sentence; empty where nothing is.</summary>
    public IEnumerable<string> Faults()
    {
        if (AsReceived is <= 0m or > Most)
        {
            yield return FormattableString.Invariant($"The sample as received weighs above 0 and at most {Most} g; read {AsReceived} g.");
            yield break;
        }

        if (Dockage < 0m || Dockage >= AsReceived)
        {
            yield return FormattableString.Invariant($"Dockage of {Dockage} g out of {AsReceived} g cannot be: it lies from 0 to less than the sample.");
            yield break;
        }

        var clean = AsReceived - Dockage;
        if (ThroughSieve is { } through && (through < 0m || through >= (Sieved ?? clean)))
        {
            yield return FormattableString.Invariant($"{through} g through the sieve out of {Sieved ?? clean} g sieved cannot be: some of the portion stays on it.");
        }

        if (Sieved is { } sieved && (sieved <= 0m || sieved > clean))
        {
            yield return FormattableString.Invariant($"A sieved portion of {sieved} g cannot be: the sample without dockage weighs {clean} g.");
        }

        foreach (var picked in Picked)
        {
            if (Readings.UnitsOf(picked.What) is not ["%"] || picked.What.NeedsBasis() || picked.What is Property.Moisture or Property.Dockage or Property.ShrunkenAndBroken or Property.RelativeHumidity)
            {
                yield return $"{picked.What.Words()} is nothing that is picked and weighed.";
            }
            else if (picked.Portion <= 0m || picked.Portion > clean || picked.Grams < 0m || picked.Grams > picked.Portion)
            {
                yield return FormattableString.Invariant($"{picked.What.Words()}: {picked.Grams} g out of a portion of {picked.Portion} g cannot be; the clean sample weighs {clean} g.");
            }
        }
    }

    private static WeighedFinding Of(Property what, decimal part, decimal whole) =>
        new(what, 100m * part / whole, string.Create(CultureInfo.InvariantCulture, $"100 × {part} g / {whole} g"));
}

/// <summary>Something picked out of a portion by hand.</summary>
/// <param name="What">The factor.</param>
/// <param name="Grams">What was picked.</param>
/// <param name="Portion">What it was picked from, on the factor's basis.</param>
public sealed record Picked(Property What, decimal Grams, decimal Portion);

/// <summary>A percentage that follows from weighings.</summary>
/// <param name="What">The factor.</param>
/// <param name="Percent">Per cent, not rounded.</param>
/// <param name="Formula">How it came about, numbers put in.</param>
public sealed record WeighedFinding(Property What, decimal Percent, string Formula);
