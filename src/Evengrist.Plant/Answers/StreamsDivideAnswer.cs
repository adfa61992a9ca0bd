using Evengrist.Streams;
using Evengrist.Streams.Dividing;

namespace Evengrist.Plant.Answers;

/// <summary>The divide that brings most, in plain values; shares and chances in per cent, ash and protein on the survey's basis.</summary>
/// <param name="Basis">Moisture basis of ash and protein.</param>
/// <param name="Currency">Currency of all money.</param>
/// <param name="ValuePerHour">What an hour brings.</param>
/// <param name="ValuePerDay">What a day of the hours asked brings.</param>
/// <param name="IsProven">Whether no divide brings more.</param>
/// <param name="GapPercent">By how much of its value a better one may bring more; 0 where proven.</param>
/// <param name="Exit">Why the solver stopped.</param>
/// <param name="SolverSeconds">Time in the solver.</param>
/// <param name="Flours">The flours, and last the rest.</param>
/// <param name="Streams">Where each stream goes, from the least ash on.</param>
/// <param name="Now">As it is divided now; null where that was not said of every stream.</param>
/// <param name="Moves">What each stream would bring elsewhere, whole, and nothing else moved.</param>
/// <param name="Note">What it is, and is not.</param>
public sealed record StreamsDivideAnswer(
    string Basis, string Currency, decimal ValuePerHour, decimal ValuePerDay, bool IsProven, double GapPercent, string Exit, double SolverSeconds,
    IReadOnlyList<DividedFlourAnswer> Flours, IReadOnlyList<DividedStreamAnswer> Streams, DividedNowAnswer? Now, IReadOnlyList<StreamMoveAnswer> Moves, string Note)
{
    /// <summary>What is said with every answer.</summary>
    public const string Said = "A decision aid: a person sets the valves. Not tuned to this mill: as sure as the survey, and prices are what was entered.";

    /// <summary>An outcome in plain values.</summary>
    public static Reply<StreamsDivideAnswer> Of(DivideOutcome outcome, DivideSpec spec) => outcome switch
    {
        DivideSolved solved => new(Of(solved, spec), []),
        DivideClash clash => new(null, [Words(clash)]),
        DivideRefused refused => new(null, refused.Faults),
        DivideNotSolved not => new(null, [not.Reason]),
        _ => throw new InvalidOperationException($"A divide ended as {outcome?.GetType().Name}."),
    };

    /// <summary>A clash in a sentence.</summary>
    public static string Words(DivideClash clash)
    {
        ArgumentNullException.ThrowIfNull(clash);
        return $"No divide keeps all of it. These cannot be kept together: {string.Join("; ", clash.Clash)}. {(clash.IsSmallest ? "Give way in one of them." : "There was no time to find the fewest: not all of them may be in the way.")}";
    }

    private static StreamsDivideAnswer Of(DivideSolved solved, DivideSpec spec)
    {
        var (best, hours) = (solved.Best, (decimal)spec.HoursPerDay);
        return new StreamsDivideAnswer(
            spec.Table.Basis.ToString(), spec.Currency, Cents(best.ValuePerHour), Cents(best.ValuePerHour * hours), solved.IsProven, 100 * solved.Gap, solved.Exit, Math.Round(solved.Took.TotalSeconds, 3),
            [.. best.Flours.Select(DividedFlourAnswer.Of)],
            [.. spec.Table.Streams.OrderBy(s => s.AshPercent).Select(s => new DividedStreamAnswer(s.Code, [.. from f in best.Flours from p in f.Parts where p.Stream == s select new ShareAnswer(f.Place.Code, 100 * p.Share)]))],
            solved.Now is { } now ? new DividedNowAnswer(Cents(now.ValuePerHour), Cents((best.ValuePerHour - now.ValuePerHour) * hours), [.. now.Missed().Select(m => m.Words)], [.. now.Flours.Select(DividedFlourAnswer.Of)]) : null,
            [.. solved.Moves.Select(m => new StreamMoveAnswer(m.Stream.Code, m.To.Code, Cents(m.ValuePerHour), [.. m.Missed.Select(l => l.Words)], m.IsOpen))], Said);
    }

    private static decimal Cents(decimal money) => Math.Round(money, 2, MidpointRounding.AwayFromZero);
}

/// <summary>What goes to a flour or to the rest.</summary>
public sealed record DividedFlourAnswer(string Code, decimal PricePerTonne, double Yield, decimal ValuePerHour, IReadOnlyList<string> Streams, IReadOnlyList<StreamMeanAnswer> Means, IReadOnlyList<LimitRoomAnswer> Limits, bool? MayBeCalledFlour)
{
    internal static DividedFlourAnswer Of(DividedFlour flour) => new(
        flour.Place.Code, flour.Place.PricePerTonne, flour.Yield, Math.Round(flour.ValuePerHour, 2, MidpointRounding.AwayFromZero), [.. flour.Parts.Select(p => p.Stream.Code)],
        [.. flour.Means.Select(m => new StreamMeanAnswer(m.What.ToString(), m.Value, m.What.Unit(), m.StandardUncertainty))], [.. flour.Rooms.Select(r => new LimitRoomAnswer(r.End.Words, r.Distance, 100 * r.Chance, r.IsKept))], flour.MayBeCalledFlour);
}

/// <summary>A mean of a flour, with one standard uncertainty.</summary>
public sealed record StreamMeanAnswer(string What, double Value, string Unit, double StandardUncertainty);

/// <summary>Distance to one end of a limit, and how surely it is kept.</summary>
public sealed record LimitRoomAnswer(string Limit, double Distance, double ChancePercent, bool IsKept);

/// <summary>Where a stream goes.</summary>
public sealed record DividedStreamAnswer(string Stream, IReadOnlyList<ShareAnswer> To);

/// <summary>A share of a stream.</summary>
public sealed record ShareAnswer(string Flour, double SharePercent);

/// <summary>The divide as it is now, and what the best one brings more in a day.</summary>
public sealed record DividedNowAnswer(decimal ValuePerHour, decimal BestBringsMorePerDay, IReadOnlyList<string> Missed, IReadOnlyList<DividedFlourAnswer> Flours);

/// <summary>What an hour would bring more if a stream went elsewhere, and the limits that would then be missed.</summary>
public sealed record StreamMoveAnswer(string Stream, string To, decimal ValuePerHour, IReadOnlyList<string> Missed, bool IsOpen);
