using Evengrist.Intake.Sampling;
using Evengrist.Plant.Cases;

namespace Evengrist.Plant.Answers;

/// <summary>The risks of accepting DON at a level: chance to accept a load at the limit (buyer's), chance not to accept one at half the limit (seller's), the level that keeps the buyer's risk at 5 %, and chances by true content.</summary>
public sealed record AcceptanceAnswer(double AcceptAt, double BuyersRiskAtLimit, double SellersRiskAtHalfLimit, double? GuardedLevel, IReadOnlyDictionary<string, double> ChanceAccepted, string Mark);

/// <summary>Whether to test a load, in the money of the costs; chances from 0 to 1.</summary>
public sealed record TestAnswer(
    bool TestNow, string Advice, double ChanceBeyondLimit, string BetterUntested, double LossUntested, double LossTested, double? DecideAt, double Value, double ValueOfKnowing, double QueueCost, double OwnCost, double Net,
    double? TurnsAtTrucks, string Prior, double PriorMean, double PriorSd, AcceptanceAnswer? Acceptance, IReadOnlyList<string> Assumed)
{
    /// <summary>Weighs a posed test; reasons where there is no prior.</summary>
    public static (TestAnswer? Answer, IReadOnlyList<string> Reasons) To(TestCase posed)
    {
        ArgumentNullException.ThrowIfNull(posed);
        return posed.TooFew is { } few ? (null, [$"Earlier loads given: {few.Loads}. That says too little; {few.Needed} are needed, and not all of them 0. Give more, or state a prior."]) : (Of(posed, TestModel.Ask(posed.Spec)), []);
    }

    private static TestAnswer Of(TestCase posed, TestOutcome outcome) => new(
        outcome is TestNow, SamplingWords.Advice(outcome), outcome.ChanceBad, outcome.AcceptUntested ? "good bin" : "lesser bin", outcome.LossUntested, outcome.LossTested, outcome.AcceptAt, outcome.Value,
        outcome.ValueOfKnowing, outcome.QueueCost, outcome.OwnCost, outcome.Net, outcome.TurnsAtTrucks, posed.Prior, posed.Spec.Prior.Mean, posed.Spec.Prior.StandardDeviation,
        posed.AcceptAt is { } level ? Risks(posed.Spec, level) : null, posed.Spec.Prior.Scale == PriorScale.Lognormal ? [.. TestModel.Assumed, DonVariance.Mark] : TestModel.Assumed);

    private static AcceptanceAnswer Risks(TestSpec spec, double level)
    {
        var rule = new AcceptanceSpec(spec.Limit, level, spec.Sizes);
        return new(level, AcceptanceModel.BuyersRisk(rule, spec.Limit), AcceptanceModel.SellersRisk(rule, spec.Limit / 2), AcceptanceModel.GuardedLevel(rule),
            new[] { 0.6, 0.8, 0.9, 1.0, 1.1, 1.2, 1.5 }.Select(share => Math.Round(share * spec.Limit, 6)).ToDictionary(c => c.ToString(System.Globalization.CultureInfo.InvariantCulture), c => AcceptanceModel.Accepted(rule, c)), DonVariance.Mark);
    }
}
