using Evengrist.Ledger;
using Evengrist.Plant.Cases;
using Evengrist.Tracing;
using NodaTime.Text;

namespace Evengrist.Plant.Answers;

/// <summary>Where something came from. Reckoned; shares are fractions.</summary>
public sealed record RootsAnswer(
    string Code, string Kind, string AsOf, IReadOnlyDictionary<string, double> Beliefs, SpreadAnswer Kilograms,
    IReadOnlyList<RootAnswer> Roots, double LeftOut, string? Nothing)
{
    /// <summary>The outcome in plain values.</summary>
    public static RootsAnswer Of(RootsOutcome outcome)
    {
        ArgumentNullException.ThrowIfNull(outcome);
        return new(outcome.Place.Code, outcome.Place.Kind.Words(), InstantPattern.ExtendedIso.Format(outcome.AsOf),
            outcome.Beliefs.ToDictionary(b => b.Outflow.Word(), b => b.Weight), SpreadAnswer.Of(outcome.Grams, outcome.Beliefs, 0.001),
            outcome.Roots.Select(r => new RootAnswer(r.Origin.Code, r.Origin.Kind.Words(), r.Truck?.Code,
                SpreadAnswer.Of(r.Share, outcome.Beliefs), SpreadAnswer.Of(r.GrainShare, outcome.Beliefs))).ToArray(), outcome.LeftOut, outcome.Nothing);
    }
}

/// <summary>One origin.</summary>
public sealed record RootAnswer(string Origin, string Kind, string? Truck, SpreadAnswer Share, SpreadAnswer GrainShare);
