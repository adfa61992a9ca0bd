using Evengrist.Ledger;

namespace Evengrist.Intake.Deciding;

/// <summary>What is advised for a load by everything that is known of it: every rule that speaks is listed, the gravest leads.</summary>
/// <remarks>Nothing is decided here: a named person decides, and says why where it goes against the advice. Model: docs/model/decision.md.</remarks>
public static class DecisionModel
{
    /// <summary>The advice.</summary>
    /// <param name="load">What is known.</param>
    /// <param name="house">The mill's rules.</param>
    /// <param name="markets">The markets whose limits hold.</param>
    /// <exception cref="ArgumentException">The load is described in a way that cannot be; every fault is named.</exception>
    public static LoadAdvice Advise(LoadToDecide load, HouseRules house, IReadOnlyList<Market> markets)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(house);
        ArgumentNullException.ThrowIfNull(markets);
        if (load.Faults() is { Count: > 0 } faults)
        {
            throw new ArgumentException(string.Join(" ", faults), nameof(load));
        }

        Ruling[] rulings =
        [
            .. (load.Seen ?? []).Select(s => LoadSigns.Find(s)!).Select(s => new Ruling(s.Kind, s.Reason, s.Source, s.Mark) { Caution = s.Caution }),
            .. load.Find(Property.Glass) is { Value: > 0m } ? [Glass] : Array.Empty<Ruling>(),
            .. InsectRule.Of(load),
            .. load.Trailer is { } trailer ? TrailerRule.Of(trailer) : house.DemandsLastLoads ? [NotDeclared] : [],
            .. markets.SelectMany(m => LimitRule.Of(load, m)),
            .. house.Rules.Select(r => r.Of(load)).OfType<Ruling>(),
            .. load.Contract is { } terms ? ContractRule.Of(load, terms) : [],
        ];
        var ordered = rulings.Distinct().OrderByDescending(r => r.Kind).ToArray();
        return new LoadAdvice(ordered.Length > 0 ? ordered[0].Kind : LoadDecisionKind.Accept, ordered, [.. StillToAsk(load, house, markets)]);
    }

    private static Ruling Glass
    {
        get
        {
            var sign = LoadSigns.Find("glass")!;
            return new(sign.Kind, sign.Reason, sign.Source, sign.Mark) { Caution = sign.Caution };
        }
    }

    private static Ruling NotDeclared => new(LoadDecisionKind.SetAside, $"The last {TrailerHistory.Asked} loads of the trailer are not declared: ask the driver.", "the mill's own rule", Grading.SourceMark.House);

    private static IEnumerable<string> StillToAsk(LoadToDecide load, HouseRules house, IReadOnlyList<Market> markets)
    {
        if (load.Seen is null)
        {
            yield return "what was smelt and seen at the probe";
        }

        if (load.Trailer is null)
        {
            yield return $"the last {TrailerHistory.Asked} loads of the trailer";
        }
        else if (load.Trailer.Loads.Count < TrailerHistory.Asked)
        {
            yield return $"{TrailerHistory.Asked - load.Trailer.Loads.Count} more of the trailer's last {TrailerHistory.Asked} loads";
        }

        foreach (var what in house.Rules.Select(r => r.What).Concat(markets.SelectMany(m => m.Limits).Where(l => l.What == Property.Don).Select(l => l.What)).Distinct().Where(w => load.Find(w) is null))
        {
            yield return what.Words();
        }
    }
}
