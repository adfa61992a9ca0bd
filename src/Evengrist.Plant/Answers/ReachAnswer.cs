using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Tracing;
using NodaTime.Text;

namespace Evengrist.Plant.Answers;

/// <summary>What something has reached. Reckoned.</summary>
public sealed record ReachAnswer(
    string Code, string Kind, string AsOf, IReadOnlyDictionary<string, double> Beliefs, SpreadAnswer Kilograms, decimal ThresholdKg,
    IReadOnlyDictionary<string, int> PackagesOverThreshold, int UnionOverThreshold, IReadOnlyDictionary<string, int> PackagesReached,
    IReadOnlyList<PackageAnswer> Packages, IReadOnlyList<WhereAnswer> Where, IReadOnlyDictionary<string, double> AccountedFor, string? Nothing)
{
    /// <summary>The outcome in plain values.</summary>
    public static ReachAnswer Of(ReachOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        Dictionary<string, T> Each<T>(IReadOnlyList<T> values) => outcome.Beliefs.Select((b, i) => (b.Outflow, values[i])).ToDictionary(e => e.Outflow.Word(), e => e.Item2);
        return new(outcome.Place.Code, outcome.Place.Kind.Words(), InstantPattern.ExtendedIso.Format(outcome.AsOf),
            outcome.Beliefs.ToDictionary(b => b.Outflow.Word(), b => b.Weight), SpreadAnswer.Of(outcome.Grams, outcome.Beliefs, 0.001), outcome.Question.Threshold.Kilograms,
            Each(outcome.Counts), outcome.UnionCount, Each(outcome.AllCounts),
            outcome.Packages.Select(p => new PackageAnswer(p.Place.Code, p.Place.Kind.Words(), p.Mass.Kilograms, InstantPattern.ExtendedIso.Format(p.Made),
                SpreadAnswer.Of(p.Grams, outcome.Beliefs, 0.001), p.ChanceOverThreshold, p.Where?.Code, p.Hold is not null)).ToArray(),
            outcome.Where.Select(w => new WhereAnswer(w.Words, w.Place?.Code, SpreadAnswer.Of(w.Grams, outcome.Beliefs, 0.001))).ToArray(),
            Each(outcome.AccountedFor), outcome.Nothing);
    }
}

/// <summary>A package that may hold some of it.</summary>
public sealed record PackageAnswer(string Code, string Kind, decimal MassKg, string Made, SpreadAnswer Kilograms, double ChanceOverThreshold, string? SentTo, bool OnHold);

/// <summary>How much of it is where now.</summary>
public sealed record WhereAnswer(string Where, string? Place, SpreadAnswer Kilograms);
