namespace Evengrist.Planning.Solving;

/// <summary>Which demands clash where not all of them can be kept together.</summary>
/// <remarks>Each demand in turn is left out for good when the rest clash without it; what remains clashes, and nothing in it can be spared.
/// Known as the deletion filter for an irreducible infeasible set; from memory.</remarks>
internal static class DeletionFilter
{
    /// <summary>Demands that clash; null where not even none of them can be kept.</summary>
    /// <param name="demands">All that is demanded, first what is to be given up first.</param>
    /// <param name="canBeKept">Whether these demands alone can be kept together.</param>
    /// <param name="goOn">Whether there is time to try one more; null for always. Demands not tried are kept.</param>
    public static Clashing<T>? Find<T>(IReadOnlyList<T> demands, Func<IReadOnlyList<T>, bool> canBeKept, Func<bool>? goOn = null)
    {
        if (!canBeKept([]))
        {
            return null;
        }

        List<T> kept = [.. demands];
        for (var tried = 0; tried < demands.Count; tried++)
        {
            if (goOn?.Invoke() == false)
            {
                return new(kept, false);
            }

            var at = kept.Count - (demands.Count - tried);
            List<T> others = [.. kept[..at], .. kept[(at + 1)..]];
            if (!canBeKept(others))
            {
                kept = others;
            }
        }

        return new(kept, true);
    }
}
