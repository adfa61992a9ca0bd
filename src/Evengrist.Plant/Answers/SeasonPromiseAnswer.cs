using Evengrist.Season;
using Evengrist.Season.Futures;

namespace Evengrist.Plant.Answers;

/// <summary>What can be promised of the flours of a posed crop year.</summary>
/// <param name="Sentences">One for each flour, soonest off target first.</param>
/// <param name="Basis">What all of it rests on.</param>
/// <param name="Futures">How many futures were reckoned.</param>
/// <param name="Seed">Their seed.</param>
/// <param name="Stated">The probability that is stated.</param>
/// <param name="Seconds">Time it took, without the plan.</param>
/// <param name="MeanCost">Mean cost of the year over the futures, money.</param>
/// <param name="CostSpread">Its standard deviation.</param>
/// <param name="Flours">By flour.</param>
public sealed record SeasonPromiseAnswer(
    IReadOnlyList<string> Sentences, string Basis, int Futures, long Seed, double Stated, double Seconds, double MeanCost, double CostSpread, IReadOnlyList<FlourPromiseAnswer> Flours)
{
    /// <summary>The promise, or why there is none.</summary>
    /// <param name="outcome">What came of it; null where there was no plan.</param>
    /// <param name="plan">What came of planning.</param>
    public static Reply<SeasonPromiseAnswer> Of(PromiseOutcome? outcome, SeasonOutcome plan) => outcome switch
    {
        null => new Reply<SeasonPromiseAnswer>(null, SeasonAnswer.Of(plan).Reasons),
        Promised promised => new Reply<SeasonPromiseAnswer>(Of(promised), []),
        NotPromised not => new Reply<SeasonPromiseAnswer>(null, [.. not.Faults.Select(f => f.ToString())]),
        PromiseStopped stopped => new Reply<SeasonPromiseAnswer>(null, [$"It was stopped after {stopped.Futures} futures, too few to say anything."]),
        _ => throw new ArgumentException($"A promise ended as {outcome.GetType().Name}.", nameof(outcome)),
    };

    private static SeasonPromiseAnswer Of(Promised promised)
    {
        var (promise, periods) = (promised.Promise, promised.Promise.Spec.Plan.Spec.Periods);
        string? From(int? period) => period is { } t ? Say(periods[t].Start) : null;
        return new SeasonPromiseAnswer(
            [.. promise.Flours.Select(f => PromiseSentence.Of(promise, f))], PromiseSentence.Basis(promise), promise.Futures, promise.Spec.Seed, promise.Spec.Stated, promised.Took.TotalSeconds, promise.Cost, promise.CostSpread,
            [.. promise.Flours.Select(f => new FlourPromiseAnswer(
                f.Flour, f.Through < 0 ? null : Say(periods[f.Through].End.PlusDays(-1)), From(f.Early), From(f.Middle), From(f.Late),
                [.. f.Ends.Select(e => new PromiseEndAnswer(e.What?.ToString(), e.Share))], [.. f.Points.Select(p => new PromisePointAnswer(Say(periods[p.Period].End.PlusDays(-1)), p.Probability, p.StandardError))]))]);
    }

    private static string Say(NodaTime.LocalDate day) => day.ToString("uuuu-MM-dd", null);
}

/// <summary>What can be promised of a flour.</summary>
/// <param name="Flour">Its code.</param>
/// <param name="Through">The last day through which it is on target as stated; null for none.</param>
/// <param name="Early">First day of the period in which it is off target in one future of twenty; null where it lasts.</param>
/// <param name="Middle">The same in one of two.</param>
/// <param name="Late">The same in nineteen of twenty.</param>
/// <param name="Ends">What ended it, most frequent first.</param>
/// <param name="Points">Share of futures on target from the start, by day.</param>
public sealed record FlourPromiseAnswer(string Flour, string? Through, string? Early, string? Middle, string? Late, IReadOnlyList<PromiseEndAnswer> Ends, IReadOnlyList<PromisePointAnswer> Points);

/// <summary>What ended a flour's time on target: a property, or null where it was not made in full; a share of the futures that ended it.</summary>
public sealed record PromiseEndAnswer(string? What, double Share);

/// <summary>The share of futures on target from the start through a day.</summary>
public sealed record PromisePointAnswer(string Through, double Probability, double StandardError);
