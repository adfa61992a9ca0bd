using Evengrist.Milling.OnPaper;
using Evengrist.Milling.Suggesting;
using Evengrist.Plant.Cases;
using Evengrist.Quantities;

namespace Evengrist.Plant.Answers;

/// <summary>The best small sets of moves for a wish. Every ± is k = 2.</summary>
/// <param name="Met">Whether the first does all that was asked; where not, it is the nearest found.</param>
/// <param name="Words">How it ended, in a sentence.</param>
/// <param name="Tuned">Whether the mill is tuned, and on how many figures.</param>
/// <param name="Basis">Moisture basis of ash and protein.</param>
/// <param name="Looked">How many single moves were allowed.</param>
/// <param name="Sets">The sets, the best first; empty where none helps.</param>
/// <param name="Remarks">What must be said with it.</param>
public sealed record MillSuggestAnswer(bool Met, string Words, string Tuned, string Basis, int Looked, IReadOnlyList<MoveSetAnswer> Sets, IReadOnlyList<string> Remarks)
{
    /// <summary>Answers a case, or says why there is no answer.</summary>
    /// <param name="posed">The case.</param>
    /// <param name="solve">Finds the moves.</param>
    public static Reply<MillSuggestAnswer> To(MillSolveCase posed, Func<SuggestSpec, SuggestOutcome> solve)
    {
        ArgumentNullException.ThrowIfNull(posed);
        ArgumentNullException.ThrowIfNull(solve);
        if (posed.Suggest is not { } asked)
        {
            return new Reply<MillSuggestAnswer>(null, ["Say what is wished: give \"suggest\" with a \"wish\", as { \"what\": \"Yield\", \"raise\": true, \"by\": 0.3 }."]);
        }

        var (tuning, reasons) = MillFitAnswer.Tuning(posed);
        return tuning is null ? new Reply<MillSuggestAnswer>(null, reasons) : solve(asked.Of(posed.FlowSheet, posed.Wheat, tuning, posed.Basis, posed.PricePerTonne)) switch
        {
            Suggested found => new Reply<MillSuggestAnswer>(Of(found, MillFitAnswer.TunedOrNot(tuning), tuning.IsTuned, posed.Basis), []),
            SuggestRefused refused => new Reply<MillSuggestAnswer>(null, refused.Reasons),
            var other => throw new InvalidOperationException($"Suggesting ended as {other.GetType().Name}."),
        };
    }

    /// <summary>What must be said with suggested moves.</summary>
    /// <param name="tuned">Whether the mill is tuned.</param>
    public static IReadOnlyList<string> Remarked(bool tuned) =>
    [
        .. tuned ? Array.Empty<string>() : [MillSolveAnswer.NotTuned],
        "Chances go by the model's own ±, each bound by itself. Sets are solved exactly, but that no smaller one does it is not proven: moves do not simply add up.",
        "Make one move, let the mill settle, take a release test or a stream sample, and only then the next.",
        MillSolveAnswer.Caution,
    ];

    private static MillSuggestAnswer Of(Suggested found, string words, bool tuned, Basis basis)
        => new(found.Met, found.Words, words, basis.ToString(), found.Looked, [.. found.Sets.Select(s => MoveSetAnswer.Of(s, basis))], Remarked(tuned));
}

/// <summary>A set of moves.</summary>
/// <param name="Moves">The moves, what helps most first.</param>
/// <param name="Wish">What becomes of the wish.</param>
/// <param name="Keep">What becomes of each figure to be kept.</param>
/// <param name="Fullest">The passage whose load comes nearest to what it may rise to.</param>
/// <param name="Flour">Change of all flour.</param>
/// <param name="MoneyPerDay">Change of what the products bring in 24 h; null without prices.</param>
/// <param name="Try">The moves as settings for "try" of a posed mill; the flow of wheat is not among them.</param>
public sealed record MoveSetAnswer(
    IReadOnlyList<MoveAnswer> Moves, BoundAnswer Wish, IReadOnlyList<BoundAnswer> Keep, BoundAnswer Fullest, MillProductAnswer Flour, PlusMinus? MoneyPerDay, SheetChange Try)
{
    internal static MoveSetAnswer Of(SuggestedSet set, Basis basis) => new(
        [.. set.Moves.Select(m => new MoveAnswer(m.Move.Words, $"{m.Move.Kind}", m.Move.Passage, m.Move.Kind is MoveKind.Cloth ? m.Move.Outlet : null, m.Move.From, m.Move.To, m.Share / PosedKept.ToDry(set.Wish.Row.Figure.Kind, basis)))],
        BoundAnswer.Of(set.Wish, basis), [.. set.Keeps.Select(k => BoundAnswer.Of(k, basis))], BoundAnswer.Of(set.Fullest, basis), MillProductAnswer.Of(set.Change.Flour, basis, null),
        set.Change.MoneyPerDay is { } money ? PlusMinus.Of(money) : null, Move.Change([.. set.Moves.Select(m => m.Move)]));
}

/// <summary>A move: what to set, from what to what (µm; m/s; t/h of dry matter), and the part of the wished change that hangs on it.</summary>
public sealed record MoveAnswer(string Words, string Kind, string Passage, int? Outlet, double From, double To, double Share);

/// <summary>A figure under a set of moves; ash and protein on the answer's basis.</summary>
/// <param name="What">What it is.</param>
/// <param name="Unit">Its unit.</param>
/// <param name="Now">As it is.</param>
/// <param name="Then">As it would be.</param>
/// <param name="Change">Its change.</param>
/// <param name="Half">The ± of the change; null where nothing is known of it.</param>
/// <param name="ChancePercent">Chance that what was asked of it holds; null where that is not known.</param>
/// <param name="Holds">Whether it holds in the mean.</param>
public sealed record BoundAnswer(string What, string Unit, double Now, double Then, double Change, double? Half, double? ChancePercent, bool Holds)
{
    /// <summary>A figure of a set on a basis.</summary>
    public static BoundAnswer Of(BoundMet met, Basis basis)
    {
        ArgumentNullException.ThrowIfNull(met);
        var (figure, dry) = (met.Row.Figure, PosedKept.ToDry(met.Row.Figure.Kind, basis));
        return new BoundAnswer(figure.Words, Units(figure.Kind, basis), met.Row.Now / dry, met.Value / dry, met.Change / dry, 2 * met.Uncertainty / dry, 100 * met.Chance, met.Holds);
    }

    /// <summary>Unit and basis of a kind of figure.</summary>
    public static string Units(WishKind kind, Basis basis) => kind switch
    {
        WishKind.Yield => "% of the wheat to first break",
        WishKind.Ash or WishKind.Protein => $"%, {basis}",
        WishKind.DamagedStarch => "% of dry matter, not tuned",
        WishKind.MoneyPerDay => "money in 24 h",
        _ => "t/h of dry matter",
    };
}
