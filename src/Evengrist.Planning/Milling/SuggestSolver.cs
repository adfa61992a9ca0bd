using Evengrist.Milling.Suggesting;

namespace Evengrist.Planning.Milling;

/// <summary>Finds the best small set of moves for a wish. Page: docs/model/suggested-moves.md.</summary>
public static class SuggestSolver
{
    /// <summary>The best set and the next best, or the nearest to what was wished.</summary>
    public static SuggestOutcome Solve(SuggestSpec spec, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(spec);
        if (spec.Faults() is { Count: > 0 } faults)
        {
            return new SuggestRefused(faults);
        }

        var mill = new SuggestMill(spec);
        if (mill.Unsolved is { } unsolved)
        {
            return new SuggestRefused([unsolved]);
        }

        if (mill.Choice.Count == 0)
        {
            return new SuggestRefused(["Nothing may be moved within these rules: allow a wider gap, air, or cloths, or leave fewer passages as they are."]);
        }

        var search = new SuggestSearch(mill, stop);
        List<SuggestedSet> sets = [];
        var aim = spec.Wish.By is null ? SuggestAim.Furthest : SuggestAim.Fewest;
        while (sets.Count < spec.Sets && !stop.IsCancellationRequested)
        {
            var next = search.Next(aim);
            if (next is null && sets.Count == 0 && aim is not SuggestAim.LeastBroken)
            {
                aim = aim is SuggestAim.Fewest ? SuggestAim.Furthest : SuggestAim.LeastBroken;
                continue;
            }

            if (next is null || (aim is SuggestAim.Furthest && next.Wish.Change * spec.Wish.Sign <= 0))
            {
                break;
            }

            sets.Add(next);
        }

        var met = sets.Count > 0 && aim is not SuggestAim.LeastBroken && sets[0].IsSure(spec.Sure);
        return new Suggested(sets, met, mill.Choice.Count, stop.IsCancellationRequested ? "Time ran out before all was looked at: what is shown was the best found until then." : Words(spec, sets, met, aim));
    }

    private static string Words(SuggestSpec spec, List<SuggestedSet> sets, bool met, SuggestAim aim)
    {
        var moves = spec.Rules.Most == 1 ? "single move" : $"set of up to {spec.Rules.Most} moves";
        return sets.Count == 0 ? $"No {moves} within these limits moves {spec.Wish.Figure.Words} the wished way and keeps the bounds: allow more, or loosen a bound."
            : met ? spec.Wish.By is null ? $"As far as a {moves} was found to go within the bounds." : $"The wish is met; no {(spec.Rules.Most == 1 ? "smaller move" : "smaller set")} was found that does."
            : aim is SuggestAim.LeastBroken ? $"No {moves} was found that keeps every bound: the nearest is shown, and what it misses."
            : sets[0].Holds ? $"No {moves} was found that does it as surely as asked: the nearest is shown."
            : $"No {moves} was found that does all that is wished within the bounds: the nearest is shown.";
    }
}
