using Evengrist.Ledger;
using Evengrist.Tracing.Recall;

namespace Evengrist.Records.Tracing;

/// <summary>Recalls that were issued: papers by number.</summary>
public static class Recalls
{
    /// <summary>Every recall, the newest first.</summary>
    public static IReadOnlyList<KeptRecall> All(Mill mill)
    {
        ArgumentNullException.ThrowIfNull(mill);
        return [.. mill.Papers(KeptRecall.PaperKind).NewestOfEach().Read<KeptRecall>(KeptRecall.TryRead).Select(p => p.Value).OrderByDescending(r => r.At).ThenByDescending(r => r.Number, StringComparer.Ordinal)];
    }

    /// <summary>One recall; null where none has the number.</summary>
    public static KeptRecall? Find(Mill mill, string number) => All(mill).FirstOrDefault(r => r.Number.Equals(number.Trim(), StringComparison.OrdinalIgnoreCase));

    /// <summary>Issues a recall and puts every package of it that is here on hold, in its name.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="draft">The recall; its number is given here.</param>
    /// <exception cref="LedgerRefusal">No reason or no name is given, or a code names no place; nothing is held or kept.</exception>
    public static (KeptRecall Recall, HoldOutcome Held) Issue(Mill mill, KeptRecall draft)
    {
        ArgumentNullException.ThrowIfNull(mill);
        ArgumentNullException.ThrowIfNull(draft);
        if (string.IsNullOrWhiteSpace(draft.By) || string.IsNullOrWhiteSpace(draft.Reason) || draft.Packages.Count == 0)
        {
            throw new LedgerRefusal(LedgerRule.Malformed, "A recall needs a name, a reason and at least one package.");
        }

        mill.Ask(view => draft.Packages.Select(view.Book.Named).ToArray());
        var shelf = mill.Papers(KeptRecall.PaperKind);
        var year = draft.At.InUtc().Year;
        for (var n = All(mill).Count(r => r.Number.StartsWith($"R-{year}-", StringComparison.Ordinal)) + 1; ; n++)
        {
            var recall = draft with { Number = FormattableString.Invariant($"R-{year}-{n:000}"), Reason = draft.Reason.Trim().ReplaceLineEndings(" "), By = draft.By.Trim() };
            if (shelf.Newest(recall.Number) is not null)
            {
                continue;
            }

            // Kept first: a hold that names a recall must find it, and the hold may be asked again.
            try
            {
                shelf.Keep(recall.Number, 1, recall.ToJson(), recall.By);
            }
            catch (LedgerRefusal taken) when (taken.Rule == LedgerRule.KeyTaken)
            {
                // Somebody else issued one under this number meanwhile: the next is ours.
                continue;
            }

            return (recall, new HoldAll(recall.Packages, recall.HoldText, recall.At).In(mill, recall.By));
        }
    }
}
