using Evengrist.Laboratory.Conformity;
using Evengrist.Laboratory.Lots;
using Evengrist.Ledger;
using Evengrist.Records.Tracing;
using NodaTime;

namespace Evengrist.Records.Laboratory;

/// <summary>A named person who may decides of a lot. A hold lies on its packages at once; a release takes it off. Nothing is decided by figures alone.</summary>
/// <param name="Lot">Code of the lot.</param>
/// <param name="Verdict">What is decided.</param>
/// <param name="Reason">Why; may be empty only for a release that the figures advise.</param>
/// <param name="At">When.</param>
public sealed record DecideLot(string Lot, LotVerdict Verdict, string Reason, Instant At)
{
    /// <summary>Which flour a downgraded lot may go as.</summary>
    public string As { get; init; } = "";

    /// <summary>Code of the specification it is held against; the mill's own where empty.</summary>
    public string Specification { get; init; } = "";

    /// <summary>How many decisions of the lot were seen, so that nobody's is overruled unseen; null for any.</summary>
    public int? Seen { get; init; }

    /// <summary>Decides. Every fault where it cannot be, and then nothing is kept and no hold changed.</summary>
    /// <param name="mill">The mill.</param>
    /// <param name="by">The person.</param>
    public DecidedLot In(Mill mill, string by)
    {
        ArgumentNullException.ThrowIfNull(mill);
        var lot = LotShelf.Find(mill, Lot, At, Specification);
        if (Faults(mill, lot, by ?? "") is { Count: > 0 } faults)
        {
            return new DecidedLot(null, [], [], faults);
        }

        var decision = new LotDecision(lot!.Lot.Code, Verdict, by!.Trim(), At, Reason.Trim())
        {
            As = Verdict == LotVerdict.Downgrade ? As.Trim() : "", Specification = lot.Judged?.Title ?? "", Results = [.. lot.Results.Select(DecidedResult.Of)],
        };
        try
        {
            return decision.IsReleased ? Release(mill, lot, decision) : Hold(mill, lot, decision);
        }
        catch (LedgerRefusal refusal)
        {
            return new DecidedLot(null, [], [], [refusal.Message]);
        }
    }

    private List<string> Faults(Mill mill, SeenLot? lot, string by)
    {
        var rules = KeepReleaseRules.Newest(mill).Rules;
        var faults = new List<string>();
        void Demand(bool holds, string otherwise)
        {
            if (!holds)
            {
                faults.Add(otherwise);
            }
        }

        Demand(!string.IsNullOrWhiteSpace(by), "Say who you are first: a decision carries a name.");
        Demand(rules.MayDecide(by), rules.Persons.Count == 0 ? "Nobody may release yet: keep the release rules with the persons who may." : rules.Refusal(by, "decide of lots"));
        Demand(Enum.IsDefined(Verdict) && Verdict != LotVerdict.None, "Say what is decided: release, hold, rework or downgrade.");
        Demand(lot is not null, $"There is no lot {Lot} with a package by then. Lots are listed by day.");
        if (lot is null)
        {
            return faults;
        }

        var advised = lot.Advice is ReleaseAdvice.Release;
        Demand(!string.IsNullOrWhiteSpace(Reason) || (Verdict == LotVerdict.Release && advised), Verdict == LotVerdict.Release ? Unadvised(lot) : "Say why.");
        Demand(Verdict != LotVerdict.Downgrade || !string.IsNullOrWhiteSpace(As), "Say which flour it may go as.");
        Demand(Verdict != LotVerdict.Downgrade || !As.Trim().Equals(lot.Lot.Flour, StringComparison.OrdinalIgnoreCase), $"It is {lot.Lot.Flour} already: a downgraded lot goes as another flour.");
        Demand(Specification.Trim().Length == 0 || lot.Judged?.Specification.Code.Equals(Specification.Trim(), StringComparison.OrdinalIgnoreCase) == true, $"No specification {Specification} of {lot.Lot.Flour} holds on that day.");
        var all = LotDecisions.All(mill).Where(d => d.Lot == lot.Lot.Code).ToArray();
        Demand(Seen is null || Seen == all.Length, "It was decided meanwhile by another: look at that decision first.");
        Demand(all.Length == 0 || all[^1].At <= At, $"It was last decided later than that, by {(all.Length == 0 ? "" : all[^1].By)}: give a later moment.");
        return faults;
    }

    private static string Unadvised(SeenLot lot) => lot.Results.FirstOrDefault(r => r.OutOfCheck.Length > 0) is { } result
        ? $"Its {result.Item.What.Words()} rests on an instrument that is not in check: {result.OutOfCheck} Test it again on another instrument or by the reference, or say why it is released all the same."
        : "The figures do not advise release: say why it is released all the same.";

    private static DecidedLot Hold(Mill mill, SeenLot lot, LotDecision decision)
    {
        // First the hold: should keeping the paper fail, the packages stand still all the same.
        var words = $"{decision.Lot}: {(decision.Verdict == LotVerdict.Rework ? "to rework: " : "")}{decision.Reason}";
        var held = new HoldAll([.. lot.Lot.Packages.Select(p => p.Place.Code)], words, decision.At).In(mill, decision.By);
        Keep(mill, decision);
        return new DecidedLot(decision, held.Held, held.Gone, []);
    }

    private static DecidedLot Release(Mill mill, SeenLot lot, LotDecision decision)
    {
        Keep(mill, decision);
        var words = $"{decision.Lot} released{(decision.As.Length > 0 ? $" as {decision.As}" : "")} by {decision.By}{(decision.Reason.Length > 0 ? ": " + decision.Reason : "")}";
        string[] free = [.. lot.Packages.Where(p => p.IsHere && p.Hold is not null).Select(p => p.Package.Place.Code)];
        mill.Record([.. free.Select(code => (Draft)new Happen($"{code} released {decision.At.ToMicros()}", code, decision.At, HappeningKind.Released, words))], decision.By, "laboratory");
        return new DecidedLot(decision, free, [], []);
    }

    private static void Keep(Mill mill, LotDecision decision) => mill.Papers(LotDecision.Kind).KeepNext(decision.Lot, decision.ToJson(), decision.By);
}

/// <summary>What became of a decision.</summary>
/// <param name="Decision">What was kept; null where it was refused.</param>
/// <param name="Packages">Packages that were put on hold or released by it.</param>
/// <param name="Gone">What had gone to customers before a hold: tell them.</param>
/// <param name="Faults">Why it was refused, each a sentence; empty where it was not.</param>
public sealed record DecidedLot(LotDecision? Decision, IReadOnlyList<string> Packages, IReadOnlyList<GoneToCustomer> Gone, IReadOnlyList<string> Faults);
